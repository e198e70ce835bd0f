// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.graticule;

import java.util.List;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * By how much the lines of a screen stray from straight ones: two polynomials of third degree in divisions, over x and y that
 * run from -1 to 1 across the graticule.
 *
 * @param u terms of what is added to the right, null for none
 * @param v terms of what is added downwards, null for none
 */
record Bend(double[] u, double[] v) {

    static final Bend NONE = new Bend(null, null);
    private static final int TERMS = 10;
    private static final int ENOUGH = 60;

    /**
     * A measured stray.
     *
     * @param x     -1 to 1 from left to right
     * @param y     -1 to 1 from top to bottom
     * @param stray in divisions
     */
    record Stray(double x, double y, double stray) {
    }

    double across(double x, double y) {
        return value(u, x, y);
    }

    double down(double x, double y) {
        return value(v, x, y);
    }

    private static double value(double[] terms, double x, double y) {
        if (terms == null) {
            return 0;
        }
        double sum = 0;
        for (int i = 0; i < TERMS; i++) {
            sum += terms[i] * term(i, x, y);
        }
        return sum;
    }

    private static double term(int i, double x, double y) {
        return switch (i) {
            case 0 -> 1;
            case 1 -> x;
            case 2 -> y;
            case 3 -> x * x;
            case 4 -> x * y;
            case 5 -> y * y;
            case 6 -> x * x * x;
            case 7 -> x * x * y;
            case 8 -> x * y * y;
            default -> y * y * y;
        };
    }

    /** Terms through strays, least squares; null where there are too few. */
    static double[] fit(List<Stray> strays) {
        if (strays.size() < ENOUGH) {
            return null;
        }
        DMatrixRMaj a = new DMatrixRMaj(TERMS, TERMS);
        DMatrixRMaj b = new DMatrixRMaj(TERMS, 1);
        for (Stray s : strays) {
            for (int i = 0; i < TERMS; i++) {
                double ti = term(i, s.x, s.y);
                b.add(i, 0, ti * s.stray);
                for (int k = 0; k < TERMS; k++) {
                    a.add(i, k, ti * term(k, s.x, s.y));
                }
            }
        }
        for (int i = 0; i < TERMS; i++) {
            a.add(i, i, strays.size() * 1e-4);
        }
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(TERMS);
        DMatrixRMaj x = new DMatrixRMaj(TERMS, 1);
        if (!solver.setA(a)) {
            return null;
        }
        solver.solve(b, x);
        return x.data;
    }

    /** The root of the mean square of what is left of strays. */
    static double left(List<Stray> strays, double[] terms) {
        return Math.sqrt(strays.stream().mapToDouble(s -> Math.pow(s.stray - value(terms, s.x, s.y), 2)).average().orElse(0));
    }
}
