package org.shelterwright.app.cli.verb;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.json.RevisionJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.text.RevisionText;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.cli.workshop.OutFolder;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.app.revision.RevisionDocuments;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.revision.Revision;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Compares two revisions of a layout. */
@Command(
        name = "compare",
        description = {
            "Say what differs between two revisions of a layout.",
            "Told are units in mm and kg, holes, cables, checks, steps, and the documents to issue again; on one page with"
                    + " --out."
        },
        footer = {
            "",
            "Both are checked from scratch. The status is 0 if the second meets every limit, 1 if not.",
            "",
            "Example:",
            "  shelterwright compare river-post/layout.json revision-b/layout.json --out differences"
        })
public final class CompareVerb extends Verb {
    @Parameters(index = "0", paramLabel = "FIRST", description = "Layout (JSON), or a sample: sample:river-post.")
    private String first = "";

    @Parameters(index = "1", paramLabel = "SECOND", description = "Layout (JSON) to compare with it.")
    private String second = "";

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Write the page (PDF) and the differences as tables (CSV) into this folder.")
    private @Nullable String out;

    @Option(
            names = "--date",
            paramLabel = "DATE",
            converter = DateText.class,
            description = "Date of the document, such as 2026-03-01 (today if not given).")
    private @Nullable LocalDate date;

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    public CompareVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        return first;
    }

    @Override
    ExitStatus run() {
        Checker checker = workshop().checker().get();
        Opened before = LayoutInput.open(first, () -> catalog.over(entries()), checker);
        Opened after = LayoutInput.open(second, () -> catalog.over(entries()), checker);
        warn(before.doubts());
        warn(after.doubts());
        Revision revision = Revision.of(checker, before.layout(), after.layout());
        ExitStatus status = status(revision.ledgerAfter());
        Written written = null;
        String into = out;
        if (into != null) {
            LocalDate given = date;
            try (OutFolder folder = OutFolder.open(Inputs.path(into))) {
                RevisionDocuments make =
                        new RevisionDocuments(workshop().version().line());
                written = new Written(folder.path())
                        .add(Folding.write(make.write(revision, given == null ? LocalDate.now() : given), folder));
            }
        }
        if (json()) {
            terminal()
                    .result(RevisionJson.of(
                            head(),
                            status.number(),
                            revision,
                            null,
                            null,
                            written == null ? List.of() : written.names()));
        } else {
            print(RevisionText.lines(revision));
            if (written != null) {
                terminal().result("");
                print(written.lines());
            }
        }
        return status;
    }
}
