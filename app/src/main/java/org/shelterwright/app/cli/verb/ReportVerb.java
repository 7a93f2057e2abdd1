package org.shelterwright.app.cli.verb;

import java.util.List;
import org.shelterwright.app.cli.json.ReportJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.text.LedgerText;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.cli.workshop.OutFolder;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.ledger.Ledger;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the documents of a layout. */
@Command(
        name = "report",
        description = "Write the documents of a layout: drawing, ledger, mass statement, pictures, 3D model, tables.",
        footer = {
            "",
            "The layout is checked first. The status is 0 if every limit is met, 1 if one is broken or not assessed;",
            "the documents are written either way and say so.",
            "",
            "Example:",
            "  shelterwright report river-post/layout.json --out river-post"
        })
public final class ReportVerb extends Verb {
    @Parameters(paramLabel = "FILE", description = "Layout (JSON), or a sample: sample:river-post, sample:water-lab.")
    private String file = "";

    @Option(names = "--out", paramLabel = "FOLDER", required = true, description = "Folder to write into.")
    private String out = "";

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    public ReportVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        return file;
    }

    @Override
    ExitStatus run() {
        Checker checker = workshop().checker().get();
        Opened opened = new Inputs(() -> catalog.over(entries()), checker.ruleSets()).toJudge(file);
        warn(opened.doubts());
        Ledger ledger = checker.check(opened.layout());
        ExitStatus status = status(ledger);
        try (OutFolder folder = OutFolder.open(Inputs.path(out))) {
            terminal().progress("Writing documents");
            List<String> files = folder.fill(aside -> workshop().documents().write(opened.layout(), ledger, aside));
            if (json()) {
                terminal().result(ReportJson.of(head(), status.number(), opened.layout(), folder.path(), files));
            } else {
                terminal().result(LedgerText.headline(opened.layout().brief().name(), ledger));
                print(Written.lines(folder.path(), files));
            }
        }
        return status;
    }
}
