// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.page;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.recognition.ink.InkPreparer;
import org.probeleaf.recognition.ink.PageInk;
import org.probeleaf.recognition.lettering.LetteringReader;
import org.probeleaf.recognition.name.BareUnits;
import org.probeleaf.recognition.name.ContactSets;
import org.probeleaf.recognition.name.PageNames;
import org.probeleaf.recognition.name.TextRoles;
import org.probeleaf.recognition.symbol.Body;
import org.probeleaf.recognition.symbol.Symbols;
import org.probeleaf.recognition.wiring.Conductors;
import org.probeleaf.recognition.wiring.Contact;
import org.probeleaf.recognition.wiring.ContactFinder;

/**
 * What one page says by itself.
 *
 * @param ink        its ink
 * @param conductors what is joined on it
 * @param bodies     its symbols, by id
 * @param contacts   where conductors meet symbols
 * @param names      what its texts say
 * @param complete   false where a part of the page could not be read
 */
public record PageReading(PageInk ink, Conductors conductors, List<Body> bodies, List<Contact> contacts,
        PageNames names, boolean complete) {

    /**
     * Reads one page.
     *
     * @param stop asked between the steps whether to give up
     * @throws CancellationException where it was given up
     */
    public static PageReading of(Drawing drawing, BooleanSupplier stop) {
        PageInk ink = InkPreparer.prepare(LetteringReader.read(drawing));
        goOn(stop);
        Symbols symbols = Symbols.find(ink);
        goOn(stop);
        Conductors conductors = new Conductors(ink, symbols);
        goOn(stop);
        List<Contact> contacts = new ContactFinder(ink, conductors, symbols.bodies()).find();
        ContactSets sets = new ContactSets(ink, conductors, symbols.bodies(), contacts);
        BareUnits all = new BareUnits(ink, conductors, sets.bodies(), sets.contacts());
        goOn(stop);
        PageNames names = TextRoles.read(ink, conductors, all.bodies(), all.contacts());
        return new PageReading(ink, conductors, all.bodies(), all.contacts(), names, drawing.complete());
    }

    private static void goOn(BooleanSupplier stop) {
        if (stop.getAsBoolean()) {
            throw new CancellationException("the recognition was stopped");
        }
    }
}
