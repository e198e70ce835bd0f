// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.cli.io.PartBooks;
import org.probeleaf.cli.io.Problem;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.partbook.PartBookFolder;
import org.probeleaf.schematic.partbook.PartType;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what the part book knows, and keeps parts of the technician's own. */
@Command(name = "parts", description = {"Say what the part book knows of a type of part, and keep parts of your own.", "",
    "Your own book is the text files of a folder; what stands in them counts before the standard book. The folder is"
            + " named without a value; the variable PROBELEAF_PARTS names another."})
public final class PartsCommand extends Verb {

    @Parameters(paramLabel = "VALUE", arity = "0..*", description = "a value as printed on the sheet: 74LS32, SN74HCT00N")
    private List<String> values = List.of();

    @Option(names = "--keep", paramLabel = "FILE", description = "keep the part that this text file describes")
    private Path keep;

    @Option(names = "--drop", paramLabel = "NAME", description = "take a part of this name out of your book")
    private String drop;

    public PartsCommand(Console console) {
        super(console);
    }

    @Override
    ExitCode run() {
        PartBookFolder folder = PartBooks.folder(console());
        if (keep != null) {
            keep(folder);
        }
        if (drop != null) {
            drop(folder);
        }
        if (keep == null && drop == null && values.isEmpty()) {
            list(folder);
        }
        PartBook book = PartBooks.book(console());
        for (String value : values) {
            PartType type = book.find(value).orElseThrow(() -> Problem.usage("the part book does not know " + value
                    + "; write it in a text file and keep it: probeleaf parts --keep FILE"));
            say(book.text(type.name()).orElseThrow().stripTrailing());
        }
        return ExitCode.DONE;
    }

    private void keep(PartBookFolder folder) {
        String text;
        try {
            text = Files.readString(keep);
        } catch (IOException e) {
            throw Problem.input(keep + ": cannot be read as UTF-8 text; check the name", e);
        }
        try {
            say("Kept " + folder.keep(text).name() + " in " + folder.path() + ".");
        } catch (IOException e) {
            throw Problem.input(keep + ": " + e.getMessage(), e);
        }
    }

    private void drop(PartBookFolder folder) {
        try {
            if (folder.own().text(drop).isEmpty()) {
                throw Problem.usage("there is no part " + drop + " in your book; probeleaf parts lists what there is");
            }
            folder.drop(drop);
            say("Took " + drop + " out of " + folder.path() + ".");
        } catch (IOException e) {
            throw Problem.input(e.getMessage(), e);
        }
    }

    private void list(PartBookFolder folder) {
        try {
            PartBook own = folder.own();
            say("The standard book knows " + PartBook.standard().types().size() + " types of parts.");
            say(own.types().isEmpty() ? "Your own book is empty; its folder is " + folder.path() + "."
                    : "Your own book, " + folder.path() + ":");
            own.types().forEach(t -> say("  " + t.name() + "  " + t.title() + ", " + t.pins().size() + " pins"));
        } catch (IOException e) {
            throw Problem.input(e.getMessage(), e);
        }
    }
}
