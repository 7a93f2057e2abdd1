package org.shelterwright.app.cli.verb;

import java.util.ArrayList;
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
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Provenance;
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
            description = "Brief or layout (JSON), or a sample: sample:river-post, sample:water-lab, sample:too-much.")
    private String file = "";

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Folder to write into; if not given, one named like the brief, below the current folder.")
    private @Nullable String out;

    @Mixin
    private final SearchOptions search = new SearchOptions();

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
            return finish(request, withProvenance(request, found, stop.stopped()), stop.stopped(), folder);
        }
    }

    private void stop(StopSignal stop) {
        terminal().message("Stopping: the best so far is kept and written.");
        stop.stop();
    }

    private ExitStatus finish(FitRequest request, FitResult result, boolean stopped, OutFolder folder) {
        List<String> layouts = new ArrayList<>();
        for (FitOption option : result.options()) {
            String name = layoutName(layouts.size() + 1);
            String saved = folder.save(name, option.layout());
            if (!saved.equals(name)) {
                terminal()
                        .message(folder.path().resolve(name)
                                + ": The file was changed by another during the search and is"
                                + " left as it is; the layout that was found is in " + saved + ".");
            }
            layouts.add(saved);
        }
        List<String> documents = List.of();
        if (!result.options().isEmpty()) {
            terminal().progress("Writing documents");
            FitOption best = result.options().get(0);
            documents = folder.fill(aside -> workshop().documents().write(best.layout(), best.ledger(), aside));
        }
        ExitStatus status = result.options().isEmpty()
                ? ExitStatus.OPEN
                : status(result.options().get(0).ledger());
        if (json()) {
            FitJson.Written written = new FitJson.Written(folder.path(), layouts, documents);
            terminal().result(FitJson.of(head(), status.number(), request, result, stopped, written));
        } else {
            print(FitText.lines(request.start().brief().name(), result, layouts));
            List<String> all = new ArrayList<>(layouts);
            all.addAll(documents);
            if (!all.isEmpty()) {
                terminal().result("");
                print(Written.lines(folder.path(), all));
            }
        }
        return status;
    }

    private FitResult withProvenance(FitRequest request, FitResult result, boolean stopped) {
        // A search that was stopped or ran on time cannot be repeated by its moves.
        boolean repeatable = !stopped && request.budget().time() == null;
        Provenance provenance = new Provenance(
                workshop().version().number(),
                request.seed(),
                repeatable ? request.budget().moves() : null);
        List<FitOption> options = result.options().stream()
                .map(option ->
                        new FitOption(option.layout().withProvenance(provenance), option.ledger(), option.score()))
                .toList();
        return new FitResult(options, result.whyNot(), result.moves(), result.elapsed());
    }

    private static String layoutName(int number) {
        return number == 1 ? "layout.json" : "layout-" + number + ".json";
    }
}
