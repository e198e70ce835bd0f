// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.probeleaf.drawing.PagePicture;
import org.probeleaf.drawing.PageSize;
import org.probeleaf.drawing.Raster;
import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetException.Problem;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.netlist.SheetKind;

/** A PDF sheet file, read with PDFBox. */
public final class PdfSheetFile implements SheetFile {

    /** The longest side of a page in points, about 350 metres; anything longer is a slip in the file. */
    private static final float LONGEST = 1_000_000;

    private final PDDocument document;
    private final PDFRenderer renderer;
    private final byte[] bytes;
    private final String path;
    private final String password;

    private PdfSheetFile(PDDocument document, byte[] bytes, String path, String password) {
        this.document = document;
        this.renderer = new PDFRenderer(document);
        this.bytes = bytes;
        this.path = path;
        this.password = password;
    }

    /** As {@link SheetFile#open(byte[], String, String)} for a PDF. */
    public static PdfSheetFile open(byte[] bytes, String path, String password) throws SheetException {
        PDDocument document = null;
        try {
            document = Loader.loadPDF(bytes, password == null ? "" : password);
            if (document.getNumberOfPages() < 1) {
                throw new SheetException(Problem.DAMAGED,
                        path + ": the PDF has no pages that can be read; get it again from its source", null);
            }
            PdfSheetFile file = new PdfSheetFile(document, bytes, path, password);
            file.pageSize(1);
            document = null;
            return file;
        } catch (InvalidPasswordException e) {
            throw password == null || password.isEmpty()
                    ? new SheetException(Problem.PASSWORD_NEEDED,
                            path + ": is protected; give its password with --password", e)
                    : new SheetException(Problem.PASSWORD_WRONG, path + ": the password does not open it; check it and give another", e);
        } catch (SheetException e) {
            throw e;
        } catch (NoClassDefFoundError e) {
            // PDFBox asks for a library of certificates, which is not shipped.
            throw new SheetException(Problem.PASSWORD_NEEDED, path + ": is protected with a certificate, which is not"
                    + " supported; have it saved without protection", e);
        } catch (IOException | RuntimeException | StackOverflowError e) {
            throw new SheetException(Problem.DAMAGED,
                    path + ": the PDF is damaged or cut short and cannot be read; get it again from its source", e);
        } finally {
            IOUtils.closeQuietly(document);
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
        return document.getNumberOfPages();
    }

    @Override
    public PageSize pageSize(int page) throws SheetException {
        PDPage p = page(page);
        PDRectangle crop = p.getCropBox();
        if (!(crop.getWidth() >= 1 && crop.getHeight() >= 1 && crop.getWidth() <= LONGEST
                && crop.getHeight() <= LONGEST)) {
            throw new SheetException(Problem.DAMAGED, path + ": page " + page + " has no size that can be shown ("
                    + crop.getWidth() + " by " + crop.getHeight() + " points); save the sheet again", null);
        }
        boolean turned = p.getRotation() % 180 != 0;
        return turned ? new PageSize(crop.getHeight(), crop.getWidth())
                : new PageSize(crop.getWidth(), crop.getHeight());
    }

    @Override
    public Drawing draw(int page, BooleanSupplier stop) throws SheetException {
        PDPage p = page(page);
        PageSize size = pageSize(page);
        PageExtractor extractor = new PageExtractor(p, displayTransform(p, size), new LayerState(document), stop);
        try {
            extractor.run();
        } catch (CancellationException e) {
            throw e;
        } catch (TooMuchException e) {
            throw new SheetException(Problem.TOO_LARGE, path + ": page " + page + " holds " + e.getMessage()
                    + ", more than any sheet does; print the sheet to a new PDF and open that", e);
        } catch (IOException | RuntimeException | StackOverflowError e) {
            throw new SheetException(Problem.DAMAGED, path + ": page " + page + " cannot be taken apart ("
                    + e.getMessage() + ")", e);
        }
        return new Drawing(page, size.width(), size.height(), kind(extractor, size), extractor.strokes(),
                extractor.fills(), extractor.texts(), extractor.pictures(), extractor.complete(), extractor.forms());
    }

    private static SheetKind kind(PageExtractor page, PageSize size) {
        double area = size.width() * size.height();
        boolean covered = page.pictures().stream()
                .anyMatch(i -> i.box().width() * i.box().height() > 0.5 * area);
        if (!covered) {
            return SheetKind.VECTOR;
        }
        return page.strokes().size() + page.fills().size() > 20 ? SheetKind.MIXED : SheetKind.SCAN;
    }

    /** Takes the page's user space to displayed coordinates: crop box, rotation, y downwards. */
    private static AffineTransform displayTransform(PDPage page, PageSize size) {
        PDRectangle crop = page.getCropBox();
        AffineTransform t = new AffineTransform();
        switch (Math.floorMod(page.getRotation(), 360)) {
            case 90 -> t.setTransform(0, 1, 1, 0, 0, 0);
            case 180 -> t.setTransform(-1, 0, 0, 1, size.width(), 0);
            case 270 -> t.setTransform(0, -1, -1, 0, size.width(), size.height());
            default -> t.setTransform(1, 0, 0, -1, 0, size.height());
        }
        t.translate(-crop.getLowerLeftX(), -crop.getLowerLeftY());
        return t;
    }

    @Override
    public Raster render(int page, double scale, Box region) throws SheetException {
        page(page);
        int w = Math.max(1, (int) Math.ceil(region.width() * scale));
        int h = Math.max(1, (int) Math.ceil(region.height() * scale));
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setBackground(Color.WHITE);
            g.clearRect(0, 0, w, h);
            g.translate(-region.x0() * scale, -region.y0() * scale);
            renderer.renderPageToGraphics(page - 1, g, (float) scale);
        } catch (IOException | RuntimeException e) {
            throw new SheetException(Problem.DAMAGED, path + ": page " + page + " cannot be drawn ("
                    + e.getMessage() + ")", e);
        } finally {
            g.dispose();
        }
        return Rasters.opaque(w, h, ((DataBufferInt) image.getRaster().getDataBuffer()).getData());
    }

    @Override
    public PagePicture picture(int page) throws SheetException {
        page(page);
        PageSize size = pageSize(page);
        try {
            Optional<DisplayList> recorded = new PageRecorder(document).record(page - 1, size);
            return recorded.isPresent() ? recorded.get() : new DirectPicture(bytes, path, password, page, size);
        } catch (IOException | RuntimeException e) {
            throw new SheetException(Problem.DAMAGED, path + ": page " + page + " cannot be drawn ("
                    + e.getMessage() + ")", e);
        }
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException e) {
            throw new IllegalStateException("cannot close " + path, e);
        }
    }

    private PDPage page(int page) throws SheetException {
        if (page < 1 || page > document.getNumberOfPages()) {
            throw new SheetException(Problem.NO_SUCH_PAGE,
                    path + ": has no page " + page + "; it has " + document.getNumberOfPages(), null);
        }
        try {
            return document.getPage(page - 1);
        } catch (RuntimeException | StackOverflowError e) {
            throw new SheetException(Problem.DAMAGED, path + ": page " + page
                    + " cannot be found, the PDF is damaged; get it again from its source", e);
        }
    }
}
