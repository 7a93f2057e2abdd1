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

/** What concerns the catalog; its own verbs do the work. */
@Command(name = "catalog", description = "List, show, check and import catalog entries.")
public final class CatalogVerb implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    private boolean help;

    private CatalogVerb() {}

    /** The verb with its own verbs below it. */
    public static CommandLine with(Workshop workshop, Terminal terminal) {
        return new CommandLine(new CatalogVerb())
                .addSubcommand(new CatalogListVerb(workshop, terminal))
                .addSubcommand(new CatalogShowVerb(workshop, terminal))
                .addSubcommand(new CatalogCheckVerb(workshop, terminal))
                .addSubcommand(new CatalogImportVerb(workshop, terminal));
    }

    @Override
    public Integer call() {
        if (spec == null || help) {
            return ExitStatus.HELD.number();
        }
        throw new ParameterException(
                spec.commandLine(), "Say what to do with the catalog: list, show, check or import.");
    }
}
