// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;

import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

import org.probeleaf.waveform.format.CaptureException;

/** Reads PNG and JPEG, turned upright as the camera says (EXIF). */
public final class PictureReader {

    /** A picture with more pixels than this on a side is no photograph of a screen. */
    public static final int LONGEST = 20_000;
    /** And none with more than this in all. */
    public static final long MOST = 51_000_000;
    private static final int SMALLEST = 64;

    private PictureReader() {
    }

    /** Whether a file begins as one of the kinds of pictures that can be read. */
    public static boolean isPicture(byte[] head) {
        return png(head) || jpeg(head);
    }

    private static boolean png(byte[] head) {
        return head.length > 8 && (head[0] & 0xff) == 0x89 && head[1] == 'P' && head[2] == 'N' && head[3] == 'G';
    }

    private static boolean jpeg(byte[] head) {
        return head.length > 3 && (head[0] & 0xff) == 0xff && (head[1] & 0xff) == 0xd8 && (head[2] & 0xff) == 0xff;
    }

    /**
     * Reads a picture.
     *
     * @throws CaptureException where it is none that can be read; one line says what is wrong and what to do
     */
    public static Picture read(byte[] bytes) throws CaptureException {
        if (!isPicture(bytes)) {
            throw new CaptureException("it is no PNG and no JPEG; save the photograph as one of these");
        }
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(png(bytes) ? "png" : "jpeg");
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                return Orientation.of(bytes).upright(pixels(reader));
            } finally {
                reader.dispose();
            }
        } catch (CaptureException e) {
            throw e;
        } catch (OutOfMemoryError e) {
            throw new CaptureException("the picture is too large for the memory there is; cut out the screen and save that");
        } catch (IOException | RuntimeException e) {
            // The decoders of the platform answer damaged files with whatever exception they run into.
            throw new CaptureException("the picture is damaged or of a kind that cannot be read;"
                    + " save it anew as PNG or JPEG with red, green and blue");
        }
    }

    private static Picture pixels(ImageReader reader) throws IOException {
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        if (Math.max(width, height) > LONGEST || (long) width * height > MOST) {
            throw new CaptureException("the picture has " + width + " by " + height
                    + " pixels, which is too large; cut out the screen and save that");
        }
        if (Math.min(width, height) < SMALLEST) {
            throw new CaptureException("the picture has only " + width + " by " + height
                    + " pixels; a screen needs at least " + SMALLEST + " each way");
        }
        BufferedImage image = reader.read(0);
        int w = image.getWidth();
        int h = image.getHeight();
        int[] argb = image.getRGB(0, 0, w, h, null, 0, w);
        if (image.getColorModel().hasAlpha()) {
            for (int i = 0; i < argb.length; i++) {
                argb[i] = onWhite(argb[i]);
            }
        }
        return new Picture(w, h, argb);
    }

    private static int onWhite(int argb) {
        int a = argb >>> 24;
        int out = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            out |= ((argb >> shift & 0xff) * a + 255 * (255 - a)) / 255 << shift;
        }
        return out;
    }
}
