// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

import org.probeleaf.photo.graticule.Spot;

/** A pinhole camera before a screen that is turned in space: where a place of the scene is seen, and back. */
final class Camera {

    private final Look look;
    private final DMatrixRMaj toPicture;
    private final DMatrixRMaj toScene = new DMatrixRMaj(3, 3);

    Camera(Look look, Random random) {
        this.look = look;
        double tilt = Math.toRadians(look.tilt());
        double turn = Math.toRadians(look.turn());
        double roll = Math.toRadians(look.roll());
        double[][] x = {{1, 0, 0}, {0, Math.cos(tilt), -Math.sin(tilt)}, {0, Math.sin(tilt), Math.cos(tilt)}};
        double[][] y = {{Math.cos(turn), 0, Math.sin(turn)}, {0, 1, 0}, {-Math.sin(turn), 0, Math.cos(turn)}};
        double[][] z = {{Math.cos(roll), -Math.sin(roll), 0}, {Math.sin(roll), Math.cos(roll), 0}, {0, 0, 1}};
        DMatrixRMaj r = times(times(new DMatrixRMaj(z), new DMatrixRMaj(x)), new DMatrixRMaj(y));
        double far = 2.4 * look.across();
        double focus = look.fill() * MadePhoto.WIDTH / look.across() * far;
        focus = Math.min(focus, 0.86 * MadePhoto.HEIGHT / look.up() * far);
        double cx = MadePhoto.WIDTH / 2.0 + 40 * (2 * random.nextDouble() - 1);
        double cy = MadePhoto.HEIGHT / 2.0 + 30 * (2 * random.nextDouble() - 1);
        DMatrixRMaj lens = new DMatrixRMaj(new double[][] {{focus, 0, cx}, {0, focus, cy}, {0, 0, 1}});
        DMatrixRMaj plane = new DMatrixRMaj(new double[][] {{r.get(0, 0), r.get(0, 1), 0}, {r.get(1, 0), r.get(1, 1), 0},
            {r.get(2, 0), r.get(2, 1), far}});
        toPicture = times(lens, plane);
        CommonOps_DDRM.invert(toPicture, toScene);
    }

    private static DMatrixRMaj times(DMatrixRMaj a, DMatrixRMaj b) {
        DMatrixRMaj out = new DMatrixRMaj(3, 3);
        CommonOps_DDRM.mult(a, b, out);
        return out;
    }

    private static double[] map(DMatrixRMaj m, double x, double y) {
        double w = m.get(2, 0) * x + m.get(2, 1) * y + m.get(2, 2);
        return new double[] {(m.get(0, 0) * x + m.get(0, 1) * y + m.get(0, 2)) / w,
            (m.get(1, 0) * x + m.get(1, 1) * y + m.get(1, 2)) / w};
    }

    /** Divisions from the upper left corner of the graticule at a pixel. */
    double[] scene(double x, double y) {
        double[] p = map(toScene, x, y);
        double half = look.across() / 2.0;
        double r2 = (p[0] * p[0] + p[1] * p[1]) / (half * half);
        // The rim of a tube is seen nearer to the middle than it would be on a flat one.
        double grow = 1 + look.barrel() * r2;
        return new double[] {p[0] * grow + half, p[1] * grow + look.up() / 2.0};
    }

    /** Where the corners of the graticule are seen. */
    List<Spot> corners() {
        List<Spot> all = new ArrayList<>();
        double half = look.across() / 2.0;
        double[][] at = {{-half, -look.up() / 2.0}, {half, -look.up() / 2.0}, {half, look.up() / 2.0}, {-half, look.up() / 2.0}};
        for (double[] c : at) {
            double s = 1;
            for (int i = 0; i < 20; i++) {
                s = 1 / (1 + look.barrel() * s * s * (c[0] * c[0] + c[1] * c[1]) / (half * half));
            }
            double[] p = map(toPicture, c[0] * s, c[1] * s);
            all.add(new Spot(p[0], p[1]));
        }
        return all;
    }
}
