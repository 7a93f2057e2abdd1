package org.shelterwright.app.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.verb.BoltDownVerb;
import org.shelterwright.app.cli.verb.CheckVerb;
import org.shelterwright.app.cli.verb.CompareVerb;
import org.shelterwright.app.cli.verb.DeskVerb;
import org.shelterwright.app.cli.verb.FitVerb;
import org.shelterwright.app.cli.verb.LoadVerb;
import org.shelterwright.app.cli.verb.ReportVerb;
import org.shelterwright.app.cli.verb.ReviseVerb;
import org.shelterwright.app.cli.verb.RouteVerb;
import org.shelterwright.app.cli.verb.StowVerb;
import org.shelterwright.app.cli.verb.Verb;
import org.shelterwright.app.cli.verb.VerbGroup;
import org.shelterwright.app.cli.verb.WeighVerb;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Storage;
import org.shelterwright.app.cli.workshop.Workshop;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** The command line as a whole: its verbs, and what becomes of their faults. */
public final class Program {
    private static final int HELP_WIDTH = 100;

    private final Workshop workshop;
    private final Terminal terminal;
    private final Faults faults;

    public Program(Workshop workshop, Terminal terminal) {
        this.workshop = workshop;
        this.terminal = terminal;
        this.faults = new Faults(workshop.version(), terminal);
    }

    /**
     * Runs one command line.
     *
     * @param arguments what was typed after the name of the program
     * @return the exit status
     */
    public ExitStatus run(String... arguments) {
        List<String> typed = List.of(arguments);
        ExitStatus status;
        try {
            status = status(commandLine(typed).execute(arguments));
        } catch (Throwable e) {
            // Whatever comes up here, a person must get a sentence and a script its status.
            status = faults.report(e, "shelterwright", typed, typed.contains("--trace"));
        }
        return delivered(status);
    }

    private ExitStatus delivered(ExitStatus status) {
        Optional<IOException> lost = terminal.lost();
        if (lost.isEmpty() || closedByReader(lost.get())) {
            return status;
        }
        terminal.message("standard output: " + Storage.sentence(lost.get()));
        return status == ExitStatus.FAILED ? status : ExitStatus.BAD_INPUT;
    }

    /** Whoever reads our results may stop reading, as "head" does. */
    private static boolean closedByReader(IOException e) {
        return String.valueOf(e.getMessage()).contains("Broken pipe");
    }

    private CommandLine commandLine(List<String> typed) {
        MainCommand main = new MainCommand(workshop);
        CommandLine root = new CommandLine(main)
                .addSubcommand(new FitVerb(workshop, terminal))
                .addSubcommand(new CheckVerb(workshop, terminal))
                .addSubcommand(new StowVerb(workshop, terminal))
                .addSubcommand(new RouteVerb(workshop, terminal))
                .addSubcommand(new BoltDownVerb(workshop, terminal))
                .addSubcommand(new WeighVerb(workshop, terminal))
                .addSubcommand(new ReportVerb(workshop, terminal))
                .addSubcommand(new LoadVerb(workshop, terminal))
                .addSubcommand("margin", VerbGroup.margin(workshop, terminal))
                .addSubcommand(new ReviseVerb(workshop, terminal))
                .addSubcommand(new CompareVerb(workshop, terminal))
                .addSubcommand("study", VerbGroup.study(workshop, terminal))
                .addSubcommand(new DeskVerb(workshop, terminal))
                .addSubcommand("catalog", VerbGroup.catalog(workshop, terminal));
        root.getCommandSpec().versionProvider(main.versions());
        layOut(root);
        return root.setOut(terminal.resultWriter())
                .setErr(terminal.messageWriter())
                .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .setUsageHelpWidth(HELP_WIDTH)
                .setParameterExceptionHandler((e, args) -> misuse(e))
                .setExecutionExceptionHandler((e, command, parsed) -> fault(e, command, parsed, typed));
    }

    private static void layOut(CommandLine command) {
        command.getCommandSpec()
                .usageMessage()
                .abbreviateSynopsis(true)
                .descriptionHeading("%n")
                .parameterListHeading("%n")
                .optionListHeading("%nOptions:%n")
                .synopsisSubcommandLabel("VERB")
                .commandListHeading("%nVerbs:%n");
        command.getSubcommands().values().forEach(Program::layOut);
    }

    private int fault(Exception e, CommandLine command, @Nullable ParseResult parsed, List<String> typed) {
        Object verb = command.getCommand();
        String place = verb instanceof Verb named ? named.place() : "shelterwright";
        boolean traced = verb instanceof Verb named && named.traced();
        return faults.report(e, place, typed, traced).number();
    }

    private int misuse(ParameterException e) {
        String name = e.getCommandLine().getCommandSpec().qualifiedName(" ");
        String message = e.getMessage() == null ? "The command line is not understood" : e.getMessage();
        List<String> near = e instanceof UnmatchedArgumentException unmatched ? unmatched.getSuggestions() : List.of();
        String sentence = message.replace(System.lineSeparator(), " ");
        terminal.message(sentence + (sentence.endsWith(".") || sentence.endsWith("?") ? "" : ".")
                + (near.isEmpty() ? "" : " Did you mean " + near.get(0) + "?") + " See: " + name + " --help");
        return ExitStatus.BAD_INPUT.number();
    }

    private static ExitStatus status(int number) {
        for (ExitStatus status : ExitStatus.values()) {
            if (status.number() == number) {
                return status;
            }
        }
        throw new IllegalStateException("A verb ended with the unknown status " + number + ".");
    }
}
