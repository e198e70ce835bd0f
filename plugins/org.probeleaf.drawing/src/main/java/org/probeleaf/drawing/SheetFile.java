// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing;

import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

import org.probeleaf.drawing.internal.SheetOpener;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.schematic.geometry.Box;

/**
 * An open sheet file. One thread at a time may use an instance; for work in parallel open the file once for each
 * thread (the bytes may be shared). Whoever opened it closes it.
 */
public interface SheetFile extends AutoCloseable {

    /**
     * Opens a file.
     *
     * @param path     the file
     * @param password for an encrypted file, or null
     * @throws SheetException where it is no sheet that can be used
     */
    static SheetFile open(Path path, String password) throws SheetException {
        return SheetOpener.open(path, password);
    }

    /**
     * Opens a file from its bytes.
     *
     * @param bytes    not copied, not to be changed while open
     * @param name     for messages; its last element is {@link #name()}
     * @param password for an encrypted file, or null
     * @throws SheetException where it is no sheet that can be used
     */
    static SheetFile open(byte[] bytes, String name, String password) throws SheetException {
        return SheetOpener.open(bytes, name, password);
    }

    /** The file's name without folders. */
    String name();

    /** The file's bytes; not to be changed. */
    byte[] bytes();

    int pageCount();

    /**
     * The size of a page as displayed.
     *
     * @param page 1-based
     * @throws SheetException where there is no such page or it is damaged
     */
    PageSize pageSize(int page) throws SheetException;

    /**
     * Takes a page apart.
     *
     * @param page 1-based
     * @throws SheetException where there is no such page, it is damaged, or it holds more than any sheet does
     */
    default Drawing draw(int page) throws SheetException {
        return draw(page, () -> false);
    }

    /**
     * Takes a page apart.
     *
     * @param page 1-based
     * @param stop asked often whether to give up
     * @throws SheetException        as {@link #draw(int)}
     * @throws CancellationException where it was given up
     */
    Drawing draw(int page, BooleanSupplier stop) throws SheetException;

    /**
     * Renders a piece of a page on white paper. Annotations that the file carries are shown.
     *
     * @param page   1-based
     * @param scale  pixels per point
     * @param region the piece, in points as displayed; the raster's size is its size times the scale, rounded up
     * @throws SheetException where there is no such page or it is damaged
     */
    Raster render(int page, double scale, Box region) throws SheetException;

    /**
     * Makes a page ready to be rendered quickly, again and again.
     *
     * @param page 1-based
     * @throws SheetException where there is no such page or it is damaged
     */
    PagePicture picture(int page) throws SheetException;

    @Override
    void close();
}
