package org.shelterwright.app.cli.verb;

import java.nio.file.Path;
import java.util.List;
import org.shelterwright.app.cli.json.CheckJson;
import org.shelterwright.app.cli.json.JourneyJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.text.LedgerText;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.layouts.check.JourneyChecker;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.file.JourneyFiles;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.file.OpenedJourney;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.transport.JourneyLedger;
import org.shelterwright.layouts.study.results.StudyFolder;
import org.shelterwright.layouts.transport.scene.JourneyScene;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a layout of a run. */
@Command(
        name = "open",
        description = "Write the layout of a run as a layout file, or its journey as a journey file, to go on with.",
        footer = {
            "",
            "It is checked again first. The status is 0 if every limit is met, 1 if not.",
            "",
            "Example:",
            "  shelterwright study open bodies 21 --out chosen.json"
        })
public final class StudyOpenVerb extends Verb {
    @Parameters(index = "0", paramLabel = "FOLDER", description = "Folder that a study was run into.")
    private String folder = "";

    @Parameters(index = "1", paramLabel = "RUN", description = "Number of the run.")
    private int number;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            required = true,
            description = "File to write; there must be none of this name.")
    private String out = "";

    public StudyOpenVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        return folder;
    }

    @Override
    ExitStatus run() {
        StudyFolder kept = StudyFolder.open(Inputs.path(folder));
        Path file = Inputs.path(out);
        if (kept.study().ofJourney()) {
            return journey(kept, file);
        }
        Layout layout = kept.layout(number);
        Ledger ledger = workshop().checker().get().check(layout);
        LayoutFiles.write(layout, file, Fingerprint.NONE);
        ExitStatus status = status(ledger);
        if (json()) {
            terminal().result(CheckJson.of(head(), status.number(), layout, ledger, ledger.rows()));
        } else {
            terminal().result(LedgerText.headline("Run " + number, ledger));
            terminal().result("The layout is in " + file + ".");
        }
        return status;
    }

    private ExitStatus journey(StudyFolder kept, Path file) {
        JourneyChecker checker = JourneyChecker.standard();
        OpenedJourney journey = kept.journey(number, checker.ruleSets());
        JourneyScene scene = checker.scene(journey.journey(), journey.parts());
        JourneyLedger ledger = checker.check(scene);
        JourneyFiles.write(journey.journey(), journey.parts(), file, Fingerprint.NONE);
        ExitStatus status = status(ledger.all());
        if (json()) {
            terminal()
                    .result(JourneyJson.of(
                            head(),
                            status.number(),
                            kept.study().plan().run(number).seed(),
                            scene,
                            ledger,
                            null,
                            List.of(String.valueOf(file))));
        } else {
            terminal().result(LedgerText.headline("Run " + number, ledger.all()));
            terminal().result("The journey is in " + file + ".");
        }
        return status;
    }
}
