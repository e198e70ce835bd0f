// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.lang.ref.SoftReference;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.function.BooleanSupplier;

import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataFormatImpl;
import javax.imageio.stream.ImageInputStream;

import org.probeleaf.drawing.PagePicture;
import org.probeleaf.drawing.PageSize;
import org.probeleaf.drawing.Raster;
import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetException.Problem;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.drawing.primitive.Picture;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.netlist.SheetKind;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * A PNG, JPEG or TIFF as a sheet: each picture in the file is a page, as large as its resolution says. Where it says
 * none, {@value #USUAL_DPI} dots an inch are taken, a common setting of scanners.
 */
final class ImageSheetFile implements SheetFile {

    static final double USUAL_DPI = 200;
    private static final double POINTS_PER_INCH = 72;
    private static final double POINTS_PER_MILLIMETRE = POINTS_PER_INCH / 25.4;
    /** Resolutions beyond these are slips in the file: a page would be smaller than a stamp or larger than a house. */
    private static final double LEAST_DPI = 20;
    private static final double MOST_DPI = 4800;
    /** A page of A1 at 600 dots an inch is below this. */
    private static final long MOST_PIXELS = 400_000_000L;

    private final byte[] bytes;
    private final String path;
    private final ImageReader reader;
    private final ImageInputStream input;
    private final int pages;
    private int lastPage;
    private SoftReference<BufferedImage> lastImage = new SoftReference<>(null);

    private ImageSheetFile(byte[] bytes, String path, ImageReader reader, ImageInputStream input)
            throws IOException {
        this.bytes = bytes;
        this.path = path;
        this.reader = reader;
        this.input = input;
        this.pages = reader.getNumImages(true);
    }

    static ImageSheetFile open(byte[] bytes, String path) throws SheetException {
        ImageIO.setUseCache(false);
        try {
            ImageInputStream input = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes));
            Iterator<ImageReader> readers = ImageIO.getImageReaders(input);
            if (!readers.hasNext()) {
                throw unreadable(path, null);
            }
            ImageReader reader = readers.next();
            reader.setInput(input);
            ImageSheetFile file = new ImageSheetFile(bytes, path, reader, input);
            if (file.pages < 1) {
                throw unreadable(path, null);
            }
            file.pageSize(1);
            return file;
        } catch (SheetException e) {
            throw e;
        } catch (IOException | RuntimeException e) {
            throw unreadable(path, e);
        }
    }

    @Override
    public String name() {
        return Path.of(path).getFileName().toString();
    }

    @Override
    public byte[] bytes() {
        return bytes;
    }

    @Override
    public int pageCount() {
        return pages;
    }

    @Override
    public PageSize pageSize(int page) throws SheetException {
        int index = index(page);
        try {
            long wide = reader.getWidth(index);
            long high = reader.getHeight(index);
            if (wide * high > MOST_PIXELS) {
                throw new SheetException(Problem.TOO_LARGE, path + ": page " + page + " has " + wide + " by " + high
                        + " pixels, which is too large; save it with a lower resolution", null);
            }
            IIOMetadata about = metadata(index);
            return new PageSize(wide * pointsPerPixel(about, "HorizontalPixelSize"),
                    high * pointsPerPixel(about, "VerticalPixelSize"));
        } catch (SheetException e) {
            throw e;
        } catch (IOException | RuntimeException e) {
            throw unreadable(path, e);
        }
    }

    @Override
    public Drawing draw(int page, BooleanSupplier stop) throws SheetException {
        PageSize size = pageSize(page);
        BufferedImage image = image(page);
        Picture picture = new Picture(new Box(0, 0, size.width(), size.height()), image.getWidth(), image.getHeight());
        return new Drawing(page, size.width(), size.height(), SheetKind.SCAN, List.of(), List.of(), List.of(),
                List.of(picture));
    }

    @Override
    public Raster render(int page, double scale, Box region) throws SheetException {
        return picture(page).render(scale, region);
    }

    @Override
    public PagePicture picture(int page) throws SheetException {
        return new ImagePicture(new ScaledImage(image(page)), pageSize(page));
    }

    @Override
    public void close() {
        reader.dispose();
        try {
            input.close();
        } catch (IOException e) {
            throw new IllegalStateException("cannot close " + path, e);
        }
    }

    private BufferedImage image(int page) throws SheetException {
        int index = index(page);
        BufferedImage image = page == lastPage ? lastImage.get() : null;
        if (image == null) {
            try {
                image = reader.read(index);
            } catch (IOException | RuntimeException e) {
                throw unreadable(path, e);
            }
            lastPage = page;
            lastImage = new SoftReference<>(image);
        }
        return image;
    }

    private int index(int page) throws SheetException {
        if (page < 1 || page > pages) {
            throw new SheetException(Problem.NO_SUCH_PAGE, path + ": has no page " + page + "; it has " + pages, null);
        }
        return page - 1;
    }

    private IIOMetadata metadata(int index) {
        try {
            return reader.getImageMetadata(index);
        } catch (IOException | RuntimeException e) {
            // The picture itself may be sound; its resolution is then not known.
            return null;
        }
    }

    /** From the size of a pixel in millimetres, where the file says it and it is believable. */
    private static double pointsPerPixel(IIOMetadata about, String element) {
        double usual = POINTS_PER_INCH / USUAL_DPI;
        if (about == null || !about.isStandardMetadataFormatSupported()) {
            return usual;
        }
        Node root = about.getAsTree(IIOMetadataFormatImpl.standardMetadataFormatName);
        NodeList found = ((Element) root).getElementsByTagName(element);
        if (found.getLength() == 0) {
            return usual;
        }
        try {
            double points = Double.parseDouble(((Element) found.item(0)).getAttribute("value")) * POINTS_PER_MILLIMETRE;
            double dpi = POINTS_PER_INCH / points;
            return dpi >= LEAST_DPI && dpi <= MOST_DPI ? points : usual;
        } catch (NumberFormatException e) {
            return usual;
        }
    }

    private static SheetException unreadable(String path, Throwable cause) {
        return new SheetException(Problem.DAMAGED, path + ": the picture is damaged, cut short or of a kind that cannot"
                + " be read; get it again, or save it as PNG", cause);
    }
}
