package org.shelterwright.app.cli.verb;

import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.json.JourneyJson;
import org.shelterwright.app.cli.json.ResultHead;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.text.JourneyText;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.Journeys;
import org.shelterwright.app.cli.workshop.OutFolder;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.app.journey.JourneyReport;
import org.shelterwright.app.sheet.Particulars;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.layouts.check.JourneyChecker;
import org.shelterwright.layouts.file.JourneyFiles;
import org.shelterwright.layouts.file.OpenedJourney;
import org.shelterwright.layouts.layout.Provenance;
import org.shelterwright.layouts.transport.scene.JourneyScene;
import org.shelterwright.solver.transport.JourneyPlanner;
import org.shelterwright.solver.transport.LoaderPacker;
import org.shelterwright.solver.transport.PlanRequest;
import org.shelterwright.solver.transport.PlanResult;
import org.shelterwright.solver.transport.WaysToGo;

/** Plans one journey and writes its documents. */
final class JourneyLoading {
    private static final String FILE = "journey.json";

    private final Workshop workshop;
    private final Terminal terminal;
    private final Supplier<Catalog> catalog;

    JourneyLoading(Workshop workshop, Terminal terminal, Supplier<Catalog> catalog) {
        this.workshop = workshop;
        this.terminal = terminal;
        this.catalog = catalog;
    }

    /**
     * What is asked.
     *
     * @param journey file or sample
     * @param ways whether ways to go are compared
     * @param out folder; {@code null} if nothing is written
     */
    record Asked(
            String journey,
            long seed,
            boolean ways,
            @Nullable String out,
            Particulars particulars) {}

    /** Runs it; with a head, the result is printed as JSON. */
    ExitStatus run(Asked asked, @Nullable ResultHead head) {
        JourneyChecker checker = JourneyChecker.standard();
        OpenedJourney opened = new Journeys(catalog, checker.ruleSets()).open(asked.journey());
        opened.doubts().forEach(doubt -> terminal.message(doubt.text()));
        JourneyPlanner planner = new JourneyPlanner(checker, new LoaderPacker(workshop.loader()));
        String out = asked.out();
        if (out == null) {
            PlanResult result = planned(planner, opened, asked);
            return tell(asked, result, head, null, new Written(Inputs.path(".")));
        }
        try (OutFolder folder = OutFolder.open(Inputs.path(out))) {
            folder.see(FILE);
            PlanResult result = planned(planner, opened, asked);
            Written written = new Written(folder.path());
            JourneyScene scene = result.scene();
            written.add(
                    folder.save(
                            FILE,
                            (file, expected) -> JourneyFiles.write(scene.journey(), scene.parts(), file, expected)),
                    "Journey, to go on with");
            List<WaysToGo.Way> ways = asked.ways() ? ways(planner, scene) : List.of();
            terminal.progress("Writing documents");
            written.add(new JourneyReport(workshop.version().line())
                    .write(scene, result.ledger(), ways, asked.particulars(), folder.path()));
            terminal.wipe();
            return tell(asked, result, head, folder, written);
        }
    }

    private List<WaysToGo.Way> ways(JourneyPlanner planner, JourneyScene scene) {
        terminal.progress("Comparing ways to go");
        return new WaysToGo(planner).of(scene);
    }

    private PlanResult planned(JourneyPlanner planner, OpenedJourney opened, Asked asked) {
        terminal.progress("Planning");
        Provenance provenance = new Provenance(workshop.version().number(), asked.seed(), null);
        PlanResult result = planner.plan(
                new PlanRequest(opened.journey().withProvenance(provenance), opened.parts(), asked.seed()));
        terminal.wipe();
        return result;
    }

    private ExitStatus tell(
            Asked asked, PlanResult result, @Nullable ResultHead head, @Nullable OutFolder folder, Written written) {
        ExitStatus status = Verb.status(result.ledger().all());
        if (head != null) {
            terminal.result(JourneyJson.of(
                    head,
                    status.number(),
                    asked.seed(),
                    result.scene(),
                    result.ledger(),
                    folder == null ? null : folder.path().toString(),
                    written.names()));
            return status;
        }
        JourneyText.lines(result.scene(), result.ledger()).forEach(terminal::result);
        if (folder != null) {
            terminal.result("");
            written.lines().forEach(terminal::result);
        }
        return status;
    }
}
