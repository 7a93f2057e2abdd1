package org.shelterwright.app.cli.verb;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.json.StudyJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.text.StudyText;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.OutFolder;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.app.report.Document;
import org.shelterwright.app.study.StudyDocuments;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.NearestName;
import org.shelterwright.layouts.study.results.Front;
import org.shelterwright.layouts.study.results.Measure;
import org.shelterwright.layouts.study.results.RunResult;
import org.shelterwright.layouts.study.results.StudyFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows the results of a study. */
@Command(
        name = "show",
        description = "Show the results of a study, also while it runs: filter, order, and choose columns.",
        footer = {
            "",
            "The status is 0 if every run shown meets every limit, 1 if not.",
            "",
            "Examples:",
            "  shelterwright study show bodies --where body=box-4200 --verdict met,close --sort mass",
            "  shelterwright study show bodies --columns run,body,use,limited,margin,unit",
            "  shelterwright study show bodies --front mass,free --out tables"
        })
public final class StudyShowVerb extends Verb {
    @Parameters(paramLabel = "FOLDER", description = "Folder that a study was run into.")
    private String folder = "";

    @Mixin
    private final RunChoice choice = new RunChoice();

    @Option(
            names = "--front",
            paramLabel = "MEASURE",
            split = ",",
            description = "Of two measures, such as mass,free: only the runs that no other run beats by both.")
    private List<String> front = new ArrayList<>();

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description =
                    "Write the table of the runs shown as CSV and XLSX into this folder; with --front, also the plot"
                            + " of the two measures as SVG and PDF.")
    private @Nullable String out;

    @Option(
            names = "--date",
            paramLabel = "DATE",
            converter = DateText.class,
            description = "Date of the documents, such as 2026-03-01 (today if not given).")
    private @Nullable LocalDate date;

    public StudyShowVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        return folder;
    }

    @Override
    ExitStatus run() {
        StudyFolder kept = StudyFolder.open(Inputs.path(folder));
        List<Measure> measures = measures();
        List<RunResult> chosen = choice.of(kept.table(), kept.study().study());
        List<RunResult> shown = measures.isEmpty() ? chosen : Front.of(chosen, measures.get(0), measures.get(1));
        Written written = written(kept, chosen, shown, measures);
        ExitStatus status =
                !shown.isEmpty() && shown.stream().allMatch(RunResult::allMet) ? ExitStatus.HELD : ExitStatus.OPEN;
        int total = kept.study().plan().count();
        if (json()) {
            terminal().result(StudyJson.runs(head(), status.number(), kept.study(), total, shown, written.names()));
            return status;
        }
        print(StudyText.table(shown, choice.columns(kept.study().study())));
        terminal().result("");
        terminal().result(StudyText.shown(shown.size(), kept.table().size(), total));
        if (!written.names().isEmpty()) {
            print(written.lines());
        }
        return status;
    }

    private Written written(StudyFolder kept, List<RunResult> chosen, List<RunResult> shown, List<Measure> measures) {
        String into = out;
        if (into == null) {
            return new Written(kept.path());
        }
        StudyDocuments make = new StudyDocuments(workshop().version().line());
        List<Document> documents = new ArrayList<>(make.tables(kept.study(), shown));
        if (!measures.isEmpty()) {
            LocalDate given = date;
            documents.addAll(make.tradeOff(
                    kept.study(), chosen, measures.get(0), measures.get(1), given == null ? LocalDate.now() : given));
        }
        try (OutFolder target = OutFolder.open(Inputs.path(into))) {
            return new Written(target.path()).add(Folding.write(documents, target));
        }
    }

    private List<Measure> measures() {
        if (front.isEmpty()) {
            return List.of();
        }
        if (front.size() != 2) {
            throw new InputException("--front", "Name two measures, such as mass,free, not " + front.size() + ".");
        }
        return front.stream()
                .map(id -> Measure.byId(id)
                        .orElseThrow(() -> new InputException(
                                "--front",
                                "The measure \"" + id + "\" is not known." + NearestName.hint(id, Measure.ids()))))
                .toList();
    }
}
