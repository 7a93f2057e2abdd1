package org.shelterwright.app.cli.verb;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.json.StudyJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.text.StudyText;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.Interrupts.Watch;
import org.shelterwright.app.cli.workshop.OutFolder;
import org.shelterwright.app.cli.workshop.StudyInputs;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.app.study.StudyDocuments;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.StudyFiles;
import org.shelterwright.layouts.study.results.RunResult;
import org.shelterwright.layouts.study.results.StudyFolder;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.study.StudyProgress;
import org.shelterwright.solver.study.StudyRunner;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Runs a study on this machine. */
@Command(
        name = "run",
        description = {
            "Run a study on this machine, one run a thread. Each result is kept as it comes; Ctrl-C ends the study and keeps"
                    + " what is done.",
            "Started again with the same folder, it goes on where it ended."
        },
        footer = {
            "",
            "The status is 0 if every run is done and meets every limit, 1 if not.",
            "The same study gives the same results on any number of threads; only their times differ.",
            "",
            "Examples:",
            "  shelterwright study run sample:river-post --count",
            "  shelterwright study run sample:river-post --out bodies",
            "  shelterwright study run sample:forty-crates --out wagons",
            "  shelterwright study run my-study.json --catalog my-items --threads 4"
        })
public final class StudyRunVerb extends Verb {
    private static final int MOST_THREADS = 1_024;

    @Parameters(
            paramLabel = "FILE",
            description = "Study (JSON), or the study of a sample: sample:river-post, sample:forty-crates.")
    private String file = "";

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Folder to write into; if not given, one named like the study, below the current folder.")
    private @Nullable String out;

    @Option(
            names = "--threads",
            paramLabel = "NUMBER",
            description = "Threads to run on (all processors if not given).")
    private @Nullable Integer threads;

    @Option(names = "--count", description = "Only say how many runs there are; write nothing.")
    private boolean count;

    @Option(
            names = "--prepare",
            description = "Only write the folder with all that the runs need, to run it on a cluster.")
    private boolean prepare;

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    public StudyRunVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        return file;
    }

    @Override
    ExitStatus run() {
        int used = threads();
        Checker checker = workshop().checker().get();
        StudyFiles.Opened opened = new StudyInputs(
                        catalog.over(entries()),
                        checker.ruleSets(),
                        workshop().version().number())
                .open(file);
        warn(opened.doubts());
        SealedStudy study = opened.study();
        List<String> counted = StudyText.count(study);
        if (count) {
            if (json()) {
                terminal().result(StudyJson.count(head(), study));
            } else {
                print(counted);
            }
            return ExitStatus.HELD;
        }
        counted.forEach(terminal()::message);
        String named = out;
        try (OutFolder folder =
                OutFolder.open(Inputs.path(named == null ? study.study().id() : named))) {
            StudyFolder kept = StudyFolder.prepare(folder.path(), study);
            if (prepare) {
                terminal().result("The study is ready in " + kept.path() + ".");
                return ExitStatus.HELD;
            }
            return runs(checker, kept, used, folder);
        }
    }

    private ExitStatus runs(Checker checker, StudyFolder kept, int used, OutFolder folder) {
        StopSignal stop = new StopSignal();
        StudyProgress stand;
        try (Watch watch = workshop().interrupts().watch(() -> stop(stop))) {
            stand = new StudyRunner(checker, workshop().fitter().apply(checker))
                    .run(kept, used, progress -> terminal().progress(StudyText.progress(progress)), stop);
        }
        terminal().wipe();
        List<RunResult> runs = kept.table();
        StudyDocuments documents = new StudyDocuments(workshop().version().line());
        Written written = new Written(kept.path())
                .add(StudyFolder.SEALED, "Study with all that its runs need")
                .add(StudyFolder.RESULTS, "Results, one a line")
                .add(Folding.write(documents.tables(kept.study(), runs), folder));
        boolean held = stand.done() == stand.total() && runs.stream().allMatch(RunResult::allMet);
        ExitStatus status = held ? ExitStatus.HELD : ExitStatus.OPEN;
        if (json()) {
            terminal()
                    .result(StudyJson.runs(
                            head(), status.number(), kept.study(), stand.total(), runs, written.names()));
            return status;
        }
        print(StudyText.summary(kept.study(), stand, runs));
        terminal().result("");
        print(written.lines());
        return status;
    }

    private int threads() {
        Integer wanted = threads;
        int used = wanted == null ? Runtime.getRuntime().availableProcessors() : wanted;
        if (used < 1 || used > MOST_THREADS) {
            throw new InputException("--threads", "This is " + used + ", but must be from 1 to " + MOST_THREADS + ".");
        }
        return used;
    }

    private void stop(StopSignal stop) {
        terminal().message("Stopping: what is done is kept; start again to go on.");
        stop.stop();
    }
}
