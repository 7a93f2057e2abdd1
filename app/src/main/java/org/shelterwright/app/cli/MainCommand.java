package org.shelterwright.app.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.about.DataVersion;
import org.shelterwright.app.cli.workshop.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What is typed before a verb. */
@Command(
        name = "shelterwright",
        description = {
            "Finds places for the equipment of a shelter and answers for every limit.",
            "",
            "Planning aid. Figures rest on the data entered. Restraint, lifting, electrical work and transport must be"
                    + " checked and released by the qualified people responsible, under the rules and codes of the place."
        },
        footer = {
            "",
            "Exit status: 0 every limit met; 1 done, but some limit is broken or not assessed;",
            "2 bad input; 3 the program failed. Results go to standard output, messages to standard error.",
            "",
            "Start with: shelterwright fit sample:river-post --out river-post"
        })
final class MainCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help; after a verb, its own.")
    private boolean help;

    @Option(
            names = {"-V", "--version"},
            versionHelp = true,
            description = "Show the versions of the program and of its built-in data.")
    private boolean version;

    private final Workshop workshop;

    MainCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    IVersionProvider versions() {
        return () -> new String[] {
            workshop.version().line(), DataVersion.of(workshop.entries().get()).line()
        };
    }

    @Override
    public Integer call() {
        if (spec == null || help || version) {
            return 0;
        }
        List<String> verbs = List.copyOf(spec.subcommands().keySet());
        throw new ParameterException(
                spec.commandLine(),
                "Say what to do: " + String.join(", ", verbs.subList(0, verbs.size() - 1)) + " or "
                        + verbs.get(verbs.size() - 1) + ".");
    }
}
