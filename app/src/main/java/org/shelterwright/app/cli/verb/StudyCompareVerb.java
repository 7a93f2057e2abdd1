package org.shelterwright.app.cli.verb;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.json.StudyJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.OutFolder;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.app.study.Compared;
import org.shelterwright.app.study.ComparisonPages;
import org.shelterwright.app.study.StudyDocuments;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.study.results.RunResult;
import org.shelterwright.layouts.study.results.StudyFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the comparison of chosen runs. */
@Command(
        name = "compare",
        description = "Write chosen runs side by side: pictures, ledgers, differences in kg and mm.",
        footer = {
            "",
            "Each layout is checked again first. The status is 0 if all meet every limit, 1 if not.",
            "",
            "Example:",
            "  shelterwright study compare bodies 3 21 --out comparison"
        })
public final class StudyCompareVerb extends Verb {
    @Parameters(index = "0", paramLabel = "FOLDER", description = "Folder that a study was run into.")
    private String folder = "";

    @Parameters(
            index = "1..*",
            paramLabel = "RUN",
            arity = "1..*",
            description = "Numbers of two to four runs; differences are from the first.")
    private List<Integer> numbers = new ArrayList<>();

    @Option(names = "--out", paramLabel = "FOLDER", required = true, description = "Folder to write into.")
    private String out = "";

    @Option(
            names = "--date",
            paramLabel = "DATE",
            converter = DateText.class,
            description = "Date of the document, such as 2026-03-01 (today if not given).")
    private @Nullable LocalDate date;

    public StudyCompareVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        return folder;
    }

    @Override
    ExitStatus run() {
        List<Integer> runs = List.copyOf(new LinkedHashSet<>(numbers));
        if (runs.size() < 2 || runs.size() > ComparisonPages.MOST) {
            throw new InputException(
                    "RUN", "Name two to " + ComparisonPages.MOST + " different runs, not " + runs.size() + ".");
        }
        StudyFolder kept = StudyFolder.open(Inputs.path(folder));
        if (kept.study().ofJourney()) {
            throw new InputException(
                    folder,
                    "Runs of a journey have no layouts to compare. Compare them in the table: shelterwright study show "
                            + folder + ".");
        }
        Checker checker = workshop().checker().get();
        List<RunResult> table = kept.table();
        List<Compared> compared = new ArrayList<>();
        for (int number : runs) {
            Layout layout = kept.layout(number);
            RunResult result = table.stream()
                    .filter(one -> one.run() == number)
                    .findFirst()
                    .orElseThrow();
            compared.add(Compared.of(result, layout, checker));
        }
        boolean held = compared.stream().allMatch(one -> one.ledger().allMet());
        ExitStatus status = held ? ExitStatus.HELD : ExitStatus.OPEN;
        LocalDate given = date;
        try (OutFolder target = OutFolder.open(Inputs.path(out))) {
            StudyDocuments make = new StudyDocuments(workshop().version().line());
            Written written = new Written(target.path())
                    .add(Folding.write(
                            make.comparison(kept.study(), compared, given == null ? LocalDate.now() : given), target));
            if (json()) {
                List<RunResult> results =
                        compared.stream().map(Compared::result).toList();
                terminal()
                        .result(StudyJson.runs(
                                head(), status.number(), kept.study(), results.size(), results, written.names()));
            } else {
                print(written.lines());
            }
        }
        return status;
    }
}
