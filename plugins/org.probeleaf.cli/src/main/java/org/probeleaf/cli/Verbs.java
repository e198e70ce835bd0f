// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.Problem;
import org.probeleaf.cli.verb.BoardsCommand;
import org.probeleaf.cli.verb.CaptureCommand;
import org.probeleaf.cli.verb.ChangeCommand;
import org.probeleaf.cli.verb.CorrectCommand;
import org.probeleaf.cli.verb.DemoCommand;
import org.probeleaf.cli.verb.HandoverCommand;
import org.probeleaf.cli.verb.HistoryCommand;
import org.probeleaf.cli.verb.JobCommand;
import org.probeleaf.cli.verb.LabelCommand;
import org.probeleaf.cli.verb.NetsCommand;
import org.probeleaf.cli.verb.NoteCommand;
import org.probeleaf.cli.verb.OverruleCommand;
import org.probeleaf.cli.verb.PartsCommand;
import org.probeleaf.cli.verb.PutBackCommand;
import org.probeleaf.cli.verb.ReadingCommand;
import org.probeleaf.cli.verb.RedoCommand;
import org.probeleaf.cli.verb.RootCommand;
import org.probeleaf.cli.verb.SuspectsCommand;
import org.probeleaf.cli.verb.TraceCommand;
import org.probeleaf.cli.verb.UndoCommand;
import org.probeleaf.cli.verb.WaveCommand;
import org.probeleaf.cli.verb.WindowCommand;

import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/**
 * The verbs in the order of the help. Only the class of the verb that was named is loaded; the others stand in the
 * help by a line of text, so that the program starts at once.
 */
final class Verbs {

    private static final Map<String, Entry> ALL = new LinkedHashMap<>();

    static {
        add("nets", "Read drawings and say what is connected.", NetsCommand::new);
        add("trace", "Say where a signal goes, over all sheets.", TraceCommand::new);
        add("wave", "Measure and judge a captured waveform.", WaveCommand::new);
        add("suspects", "Say which parts may be to blame, and where to probe next.", SuspectsCommand::new);
        add("job", "Make a job, show it, check its file.", JobCommand::new);
        add("label", "Overlay a net label on a job's sheets.", LabelCommand::new);
        add("note", "Pin a note to a place.", NoteCommand::new);
        add("reading", "Pin a reading to a place.", ReadingCommand::new);
        add("overrule", "Give a reading your own verdict.", OverruleCommand::new);
        add("history", "Tell what was read at a place over time.", HistoryCommand::new);
        add("capture", "Pin a captured waveform to a place.", CaptureCommand::new);
        add("correct", "Correct what was read from a job's sheets.", CorrectCommand::new);
        add("change", "Note what was done to the board.", ChangeCommand::new);
        add("putback", "List what is to be put back, or note that it was.", PutBackCommand::new);
        add("boards", "Compare drawing, this board and a known-good one.", BoardsCommand::new);
        add("parts", "Say what the part book knows; keep parts of your own.", PartsCommand::new);
        add("undo", "Undo the last change of a job.", UndoCommand::new);
        add("redo", "Redo the change undone last.", RedoCommand::new);
        add("handover", "Write the marked-up sheets for the customer.", HandoverCommand::new);
        add("window", "Open the workbench.", WindowCommand::new);
        add("demo", "Take the example from the sheet to the hand-over.", DemoCommand::new);
    }

    private Verbs() {
    }

    private record Entry(String summary, Function<Console, Object> maker) {
    }

    private static void add(String name, String summary, Function<Console, Object> maker) {
        ALL.put(name, new Entry(summary, maker));
    }

    /**
     * The parser for a command line.
     *
     * @throws Problem where it names a verb that there is not
     */
    static CommandLine commandLine(String[] args, Console console) {
        CommandLine line = new CommandLine(new RootCommand(console));
        String named = verb(args);
        if (named != null && !ALL.containsKey(named)) {
            throw Problem.usage("there is no verb \"" + named + "\"; known are " + String.join(", ", ALL.keySet()));
        }
        ALL.forEach((name, entry) -> {
            if (name.equals(named)) {
                line.addSubcommand(name, spaced(new CommandLine(entry.maker().apply(console))));
            } else {
                CommandSpec spec = CommandSpec.create().name(name);
                spec.usageMessage().description(entry.summary());
                line.addSubcommand(name, new CommandLine(spec));
            }
        });
        return line;
    }

    /** Sets the list of words and options off from the text above it. */
    private static CommandLine spaced(CommandLine line) {
        line.getCommandSpec().usageMessage().parameterListHeading("%n").commandListHeading("%nVerbs:%n");
        line.getSubcommands().values().forEach(Verbs::spaced);
        return line;
    }

    /** The first word that is no option, or null. */
    private static String verb(String[] args) {
        for (String arg : args) {
            if (!arg.startsWith("-")) {
                return arg;
            }
        }
        return null;
    }
}
