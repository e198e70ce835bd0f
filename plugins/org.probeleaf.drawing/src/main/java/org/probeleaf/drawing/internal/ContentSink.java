// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.io.IOException;
import java.util.List;

import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;

/** Takes the instructions of a content stream that do not make or paint a path. */
interface ContentSink {

    /** An instruction was read, of any kind. */
    void counted();

    /** An instruction lacked operands. */
    void missing();

    /** Sets the line width, in user space. */
    void lineWidth(double width);

    /** Sets how lines end: 0 cut, 1 round, 2 square. */
    void lineCap(int cap);

    /**
     * Sets a colour in the device's own colours.
     *
     * @param stroking of lines, else of fills and letters
     * @param red      0 to 1, as are the others; beyond that damaged
     */
    void colour(boolean stroking, double red, double green, double blue);

    void saveGraphicsState();

    /** Restores the state saved last; where none is, the stream is damaged. */
    void restoreIfSaved();

    /** A picture within the stream. */
    void inlinePicture(COSDictionary entries);

    /** Any other instruction. */
    void other(String operator, List<COSBase> operands) throws IOException;
}
