package org.shelterwright.app.cli.verb;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Workshop;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What concerns studies; its own verbs do the work. */
@Command(
        name = "study",
        description = {
            "Fit one brief in many ways, and compare what comes out.",
            "",
            "A study file names a brief, axes with settings (bodies, items, quantities, limits, seeds) and the moves of each"
                    + " run. Every way to take one setting from each axis is one fit."
        })
public final class StudyVerb implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    private boolean help;

    private StudyVerb() {}

    /** The verb with its own verbs below it. */
    public static CommandLine with(Workshop workshop, Terminal terminal) {
        return new CommandLine(new StudyVerb())
                .addSubcommand(new StudyRunVerb(workshop, terminal))
                .addSubcommand(new StudyShowVerb(workshop, terminal))
                .addSubcommand(new StudyCompareVerb(workshop, terminal))
                .addSubcommand(new StudyOpenVerb(workshop, terminal));
    }

    @Override
    public Integer call() {
        if (spec == null || help) {
            return ExitStatus.HELD.number();
        }
        throw new ParameterException(spec.commandLine(), "Say what to do with studies: run, show, compare or open.");
    }
}
