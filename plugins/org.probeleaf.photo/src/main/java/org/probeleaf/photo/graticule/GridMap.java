// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.graticule;

import java.util.ArrayList;
import java.util.List;

import boofcv.alg.geo.h.HomographyDirectLinearTransform;
import boofcv.struct.geo.AssociatedPair;
import georegression.struct.homography.Homography2D_F64;
import georegression.struct.point.Point2D_F64;
import georegression.transform.homography.HomographyPointOps_F64;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.ops.DConvertMatrixStruct;

/**
 * The way from the grid to the picture: a smooth bend of a fraction of a division, then a homography. Both frames are those
 * of this package; immutable.
 */
public final class GridMap {

    private final Divisions divisions;
    private final Homography2D_F64 toPicture;
    private final Homography2D_F64 toGrid;
    private final Bend bend;

    private GridMap(Divisions divisions, DMatrixRMaj matrix, Bend bend) {
        this.divisions = divisions;
        this.bend = bend;
        toPicture = new Homography2D_F64();
        toGrid = new Homography2D_F64();
        DConvertMatrixStruct.convert(matrix, toPicture);
        DMatrixRMaj inverse = new DMatrixRMaj(3, 3);
        if (!CommonOps_DDRM.invert(matrix, inverse)) {
            throw new IllegalArgumentException("the corners of the graticule lie on one line; mark them anew");
        }
        DConvertMatrixStruct.convert(inverse, toGrid);
    }

    /** Straight lines to straight lines, through four corners. */
    public static GridMap of(Divisions divisions, Corners corners) {
        List<AssociatedPair> pairs = new ArrayList<>();
        double[][] uv = {{0, 0}, {divisions.across(), 0}, {divisions.across(), divisions.up()}, {0, divisions.up()}};
        for (int i = 0; i < 4; i++) {
            Spot s = corners.list().get(i);
            pairs.add(new AssociatedPair(uv[i][0], uv[i][1], s.x(), s.y()));
        }
        return of(divisions, pairs, Bend.NONE);
    }

    /** Through four pairs of places or, in the sense of least squares, more: first in the grid, second in the picture. */
    static GridMap of(Divisions divisions, List<AssociatedPair> pairs, Bend bend) {
        DMatrixRMaj matrix = new DMatrixRMaj(3, 3);
        if (!new HomographyDirectLinearTransform(true).process(pairs, matrix)) {
            throw new IllegalArgumentException("the corners of the graticule lie on one line; mark them anew");
        }
        return new GridMap(divisions, matrix, bend);
    }

    /** The same homography after another bend. */
    GridMap with(Bend other) {
        DMatrixRMaj matrix = new DMatrixRMaj(3, 3);
        DConvertMatrixStruct.convert(toPicture, matrix);
        return new GridMap(divisions, matrix, other);
    }

    /** The same in a picture larger by a whole factor. */
    GridMap scaled(int factor) {
        DMatrixRMaj matrix = new DMatrixRMaj(3, 3);
        DConvertMatrixStruct.convert(toPicture, matrix);
        double shift = 0.5 * factor - 0.5;
        DMatrixRMaj larger = new DMatrixRMaj(new double[][] {{factor, 0, shift}, {0, factor, shift}, {0, 0, 1}});
        DMatrixRMaj out = new DMatrixRMaj(3, 3);
        CommonOps_DDRM.mult(larger, matrix, out);
        return new GridMap(divisions, out, bend);
    }

    /** How many divisions there are. */
    public Divisions divisions() {
        return divisions;
    }

    /** The bend of the screen. */
    Bend bend() {
        return bend;
    }

    /** Where a place of the grid is seen. */
    public Spot picture(double u, double v) {
        double x = 2 * u / divisions.across() - 1;
        double y = 2 * v / divisions.up() - 1;
        return straight(u + bend.across(x, y), v + bend.down(x, y));
    }

    private Spot straight(double u, double v) {
        Point2D_F64 out = HomographyPointOps_F64.transform(toPicture, u, v, (Point2D_F64) null);
        return new Spot(out.x, out.y);
    }

    /** Where a pixel lies in the grid, without the bend: divisions to the right (x) and down (y). */
    Spot unbent(Spot pixel) {
        Point2D_F64 out = HomographyPointOps_F64.transform(toGrid, pixel.x(), pixel.y(), (Point2D_F64) null);
        return new Spot(out.x, out.y);
    }

    /** Where the four corners are seen. */
    public Corners corners() {
        int w = divisions.across();
        int h = divisions.up();
        return new Corners(picture(0, 0), picture(w, 0), picture(w, h), picture(0, h));
    }

    /** How long a division is, in pixels: about, in the middle of the screen, the mean of both directions. */
    public double pixels() {
        double u = divisions.across() / 2.0;
        double v = divisions.up() / 2.0;
        return (picture(u - 0.5, v).distance(picture(u + 0.5, v)) + picture(u, v - 0.5).distance(picture(u, v + 0.5))) / 2;
    }
}
