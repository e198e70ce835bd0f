// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;

import org.probeleaf.photo.graticule.Spot;

/** Photographs of screens of our own: painted flat, turned in space, lit, blurred, given noise, and kept as JPEG. */
final class MadePhoto {

    static final int WIDTH = 880;
    static final int HEIGHT = 660;

    final byte[] jpeg;
    /** From the top left clockwise, in pixels. */
    final List<Spot> corners;

    private MadePhoto(byte[] jpeg, List<Spot> corners) {
        this.jpeg = jpeg;
        this.corners = corners;
    }

    static MadePhoto of(MadeWave wave, Look look, Random random, float quality) throws IOException {
        FlatScene scene = FlatScene.of(wave, look, random);
        Camera camera = new Camera(look, random);
        float[][] light = new float[3][WIDTH * HEIGHT];
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                for (int i = 0; i < 3; i++) {
                    double[] uv = camera.scene(x + (i - 1) / 3.0, y + (i * 2 % 3 - 1) / 3.0);
                    scene.add(uv[0], uv[1], light, y * WIDTH + x, 1 / 3f);
                }
            }
        }
        glare(light, look, camera, random);
        for (float[] plane : light) {
            blur(plane, look.blur());
        }
        return new MadePhoto(jpeg(light, look, random, quality), camera.corners());
    }

    /** Soft bright spots, a gradient, and the reflection of a window. */
    private static void glare(float[][] light, Look look, Camera camera, Random random) {
        int blobs = 1 + random.nextInt(3);
        double[][] at = new double[blobs][];
        for (int i = 0; i < blobs; i++) {
            at[i] = new double[] {random.nextDouble() * WIDTH, random.nextDouble() * HEIGHT,
                WIDTH * (0.06 + 0.2 * random.nextDouble()), look.glare() * (0.2 + 0.5 * random.nextDouble())};
        }
        double slopeX = look.glare() * 0.25 * (2 * random.nextDouble() - 1);
        double slopeY = look.glare() * 0.25 * (2 * random.nextDouble() - 1);
        Spot a = camera.corners().get(0);
        double wx = a.x() + 120 + random.nextDouble() * 300;
        double wy = a.y() + 60 + random.nextDouble() * 200;
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                double add = Math.max(0, 0.1 * look.glare() + slopeX * (x / (double) WIDTH - 0.5)
                        + slopeY * (y / (double) HEIGHT - 0.5));
                for (double[] b : at) {
                    double d = Math.hypot(x - b[0], (y - b[1]) * 1.4) / b[2];
                    add += b[3] * Math.exp(-d * d);
                }
                if (look.dressed() && x > wx && x < wx + 170 && y > wy + (x - wx) * 0.1 && y < wy + 130 + (x - wx) * 0.1) {
                    add += 0.12 * look.glare();
                }
                for (float[] plane : light) {
                    // What is lit already is lit less by a reflection: it is added as light is, before the eye's curve.
                    float v = plane[y * WIDTH + x];
                    plane[y * WIDTH + x] = (float) Math.pow(Math.pow(v, 2.2) + Math.pow(add, 2.2), 1 / 2.2);
                }
            }
        }
    }

    private static void blur(float[] plane, double sigma) {
        int reach = (int) Math.ceil(3 * sigma);
        float[] weights = new float[2 * reach + 1];
        float sum = 0;
        for (int i = -reach; i <= reach; i++) {
            weights[i + reach] = (float) Math.exp(-i * i / (2 * sigma * sigma));
            sum += weights[i + reach];
        }
        for (boolean level : new boolean[] {true, false}) {
            float[] in = plane.clone();
            for (int y = 0; y < HEIGHT; y++) {
                for (int x = 0; x < WIDTH; x++) {
                    float v = 0;
                    for (int i = -reach; i <= reach; i++) {
                        int at = level ? y * WIDTH + Math.max(0, Math.min(WIDTH - 1, x + i))
                                : Math.max(0, Math.min(HEIGHT - 1, y + i)) * WIDTH + x;
                        v += in[at] * weights[i + reach];
                    }
                    plane[y * WIDTH + x] = v / sum;
                }
            }
        }
    }

    private static byte[] jpeg(float[][] light, Look look, Random random, float quality) throws IOException {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < WIDTH * HEIGHT; i++) {
            int rgb = 0;
            for (int c = 0; c < 3; c++) {
                double v = light[c][i] * 255 + random.nextGaussian() * look.noise();
                rgb = rgb << 8 | (int) Math.max(0, Math.min(255, Math.round(v)));
            }
            image.setRGB(i % WIDTH, i / WIDTH, rgb);
        }
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam how = writer.getDefaultWriteParam();
        how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        how.setCompressionQuality(quality);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        writer.setOutput(ImageIO.createImageOutputStream(out));
        writer.write(null, new IIOImage(image, null, null), how);
        ((javax.imageio.stream.ImageOutputStream) writer.getOutput()).close();
        writer.dispose();
        return out.toByteArray();
    }

    /** The corners as a person would mark them, out by so many pixels each way at most. */
    List<Spot> marked(Random random, double most) {
        List<Spot> all = new ArrayList<>();
        for (Spot s : corners) {
            all.add(new Spot(s.x() + most * (2 * random.nextDouble() - 1), s.y() + most * (2 * random.nextDouble() - 1)));
        }
        return all;
    }

    BufferedImage image() throws IOException {
        return ImageIO.read(new ByteArrayInputStream(jpeg));
    }
}
