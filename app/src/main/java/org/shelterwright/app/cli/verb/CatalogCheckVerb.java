package org.shelterwright.app.cli.verb;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.about.DataVersion;
import org.shelterwright.app.cli.json.CatalogJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.catalog.json.CatalogEntries;
import org.shelterwright.catalog.json.CatalogFolder;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Reads catalog entries and tells everything that is wrong with them. */
@Command(
        name = "check",
        description = "Read catalog entries and tell everything that is wrong with them, each with its place.",
        footer = {"", "Example:", "  shelterwright catalog check my-items"})
public final class CatalogCheckVerb extends Verb {
    @Parameters(
            paramLabel = "FILE",
            arity = "1..*",
            description = "Files of catalog entries (JSON), or folders of them.")
    private List<String> files = new ArrayList<>();

    public CatalogCheckVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        return String.join(", ", files);
    }

    @Override
    ExitStatus run() {
        List<Problem> problems = new ArrayList<>();
        List<InputFile> single = new ArrayList<>();
        List<CatalogEntries> read = new ArrayList<>();
        for (String name : files) {
            Path path = Inputs.path(name);
            try {
                if (Files.isDirectory(path)) {
                    read.add(CatalogFolder.read(path));
                } else {
                    single.add(InputFile.read(path));
                }
            } catch (InputException e) {
                problems.addAll(e.problems());
            }
        }
        try {
            read.add(CatalogEntries.read(single));
        } catch (InputException e) {
            problems.addAll(e.problems());
        }
        ExitStatus status = problems.isEmpty() ? ExitStatus.HELD : ExitStatus.BAD_INPUT;
        if (json()) {
            terminal().result(CatalogJson.check(head(), status.number(), problems));
        } else {
            problems.forEach(problem -> terminal().result(problem.text()));
            terminal().result(problems.isEmpty() ? sound(read) : wrong(problems.size()));
        }
        return status;
    }

    private static String sound(List<CatalogEntries> read) {
        int items = 0;
        int bodies = 0;
        int carriers = 0;
        for (CatalogEntries entries : read) {
            DataVersion version = DataVersion.of(entries);
            items += version.items();
            bodies += version.bodies();
            carriers += version.carriers();
        }
        return "No problems: " + items + " items, " + bodies + " bodies, " + carriers + " carriers.";
    }

    private static String wrong(int problems) {
        return problems == 1 ? "1 problem." : problems + " problems.";
    }
}
