package org.shelterwright.app.cli.verb;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.json.FitJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.text.FitText;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.Interrupts.Watch;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.cli.workshop.OutFolder;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.app.report.Document;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.solver.fit.FitOption;
import org.shelterwright.solver.fit.FitRequest;
import org.shelterwright.solver.fit.FitResult;
import org.shelterwright.solver.fit.StopSignal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds places for the units of a brief. */
@Command(
        name = "fit",
        description = {
            "Find places for the units of a brief, check every limit, and write the layout with all its documents.",
            "Of a layout, pinned units stay where they are. Ctrl-C ends the search and keeps the best so far."
        },
        footer = {
            "",
            "The same seed and moves give the same layouts, on any number of threads.",
            "",
            "Examples:",
            "  shelterwright fit sample:river-post --out river-post",
            "  shelterwright fit my-brief.json --catalog my-items --time 2m --alternatives 5"
        })
public final class FitVerb extends Verb {
    @Parameters(
            paramLabel = "FILE",
            description = {
                "Brief or layout (JSON), or one of the samples",
                "sample:river-post, sample:water-lab, sample:too-much."
            })
    private String file = "";

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Folder to write into; if not given, one named like the brief, below the current folder.")
    private @Nullable String out;

    @Mixin
    private final SearchOptions search = new SearchOptions();

    @Mixin
    private final ParticularsOptions particulars = new ParticularsOptions();

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    public FitVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        return file;
    }

    @Override
    ExitStatus run() {
        Checker checker = workshop().checker().get();
        Opened opened = new Inputs(() -> catalog.over(entries()), checker.ruleSets()).toFit(file);
        warn(opened.doubts());
        FitRequest request = search.request(opened.layout());
        checker.scene(request.start());
        String named = out;
        String folderName = named == null ? request.start().brief().id() : named;
        StopSignal stop = new StopSignal();
        try (OutFolder folder = OutFolder.open(Inputs.path(folderName));
                Watch watch = workshop().interrupts().watch(() -> stop(stop))) {
            folder.see(layoutName(1));
            FitResult found = workshop().fitter().apply(checker).fit(request, new SearchProgress(terminal()), stop);
            terminal().wipe();
            if (stop.stopped()) {
                terminal().message("The search was stopped after " + found.moves() + " moves.");
            }
            FitResult result =
                    found.with(request.provenance(workshop().version().number(), stop.stopped()));
            Written written = write(result, checker, folder);
            return tell(request, result, stop.stopped(), folder, written);
        }
    }

    private void stop(StopSignal stop) {
        terminal().message("Stopping: the best so far is kept and written.");
        stop.stop();
    }

    private Written write(FitResult result, Checker checker, OutFolder folder) {
        Written written = new Written(folder.path());
        for (int i = 0; i < result.options().size(); i++) {
            String name = layoutName(i + 1);
            String saved = folder.save(name, result.options().get(i).layout());
            if (!saved.equals(name)) {
                terminal()
                        .message(folder.path().resolve(name) + ": The file was changed by another during the search and"
                                + " is left as it is; the layout that was found is in " + saved + ".");
            }
            written.add(saved, i == 0 ? "Layout, to go on with" : "Alternative layout");
        }
        if (!result.options().isEmpty()) {
            terminal().progress("Writing documents");
            written.add(documents(result.options().get(0), checker, folder));
        }
        return written;
    }

    private List<Document> documents(FitOption best, Checker checker, OutFolder folder) {
        try {
            return workshop()
                    .documents()
                    .write(checker.scene(best.layout()), best.ledger(), particulars.particulars(), folder.path());
        } catch (InputException e) {
            terminal().message("The layouts were saved in " + folder.path() + ", the documents were not.");
            throw e;
        }
    }

    private ExitStatus tell(FitRequest request, FitResult result, boolean stopped, OutFolder folder, Written written) {
        ExitStatus status = result.options().isEmpty()
                ? ExitStatus.OPEN
                : status(result.options().get(0).ledger());
        if (json()) {
            terminal()
                    .result(FitJson.of(
                            head(), status.number(), request, result, stopped, folder.path(), written.names()));
            return status;
        }
        print(FitText.lines(request.start().brief().name(), result, written.names()));
        if (!written.names().isEmpty()) {
            terminal().result("");
            print(written.lines());
        }
        return status;
    }

    private static String layoutName(int number) {
        return number == 1 ? "layout.json" : "layout-" + number + ".json";
    }
}
