package org.shelterwright.app.cli.verb;

import java.util.List;
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

/** A verb that does nothing itself: the verbs below it do the work. */
@Command
public final class VerbGroup implements Callable<Integer> {
    private final String about;

    @Spec
    private @Nullable CommandSpec spec;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    private boolean help;

    private VerbGroup(String about) {
        this.about = about;
    }

    /** What concerns the catalog. */
    public static CommandLine catalog(Workshop workshop, Terminal terminal) {
        return of(
                "catalog",
                "the catalog",
                List.of("List, show, check and import catalog entries."),
                new CatalogListVerb(workshop, terminal),
                new CatalogShowVerb(workshop, terminal),
                new CatalogCheckVerb(workshop, terminal),
                new CatalogImportVerb(workshop, terminal));
    }

    /** What concerns studies. */
    public static CommandLine study(Workshop workshop, Terminal terminal) {
        return of(
                "study",
                "studies",
                List.of(
                        "Fit one brief, or load one journey, in many ways, and compare what comes out.",
                        "",
                        "A study file names a brief, axes with settings (bodies, items, quantities, limits, seeds) and the"
                                + " moves of each run, or a journey and axes with cars. Every way to take one setting from each"
                                + " axis is one run."),
                new StudyRunVerb(workshop, terminal),
                new StudyShowVerb(workshop, terminal),
                new StudyCompareVerb(workshop, terminal),
                new StudyOpenVerb(workshop, terminal));
    }

    /** What a layout has to give. */
    public static CommandLine margin(Workshop workshop, Terminal terminal) {
        return of(
                "margin",
                "margins",
                List.of(
                        "Say what a layout has to give: what still fits, how much its units may grow, which move gains most"
                                + " on a limit, and the chance that a limit is exceeded."),
                new MarginRoomVerb(workshop, terminal),
                new MarginGrowthVerb(workshop, terminal),
                new MarginGainVerb(workshop, terminal),
                new MarginChanceVerb(workshop, terminal));
    }

    private static CommandLine of(String name, String about, List<String> description, Verb... verbs) {
        CommandLine group = new CommandLine(new VerbGroup(about));
        CommandSpec spec = group.getCommandSpec().name(name);
        spec.usageMessage().description(description.toArray(String[]::new));
        for (Verb verb : verbs) {
            group.addSubcommand(verb);
        }
        return group;
    }

    @Override
    public Integer call() {
        if (spec == null || help) {
            return ExitStatus.HELD.number();
        }
        List<String> verbs = List.copyOf(spec.subcommands().keySet());
        throw new ParameterException(
                spec.commandLine(),
                "Say what to do with " + about + ": " + String.join(", ", verbs.subList(0, verbs.size() - 1)) + " or "
                        + verbs.get(verbs.size() - 1) + ".");
    }
}
