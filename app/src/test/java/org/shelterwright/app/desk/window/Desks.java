package org.shelterwright.app.desk.window;

import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import org.shelterwright.app.about.ProgramVersion;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.Interrupts;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.app.desk.ask.Questions;
import org.shelterwright.app.desk.preferences.PreferencesFile;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.report.Report;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.load.StandardLoader;

/** Opens windows for tests, put together as for people. For the window's thread. */
final class Desks {
    private static final Checker CHECKER = Checker.standard();

    /** An open window, and when it is closed. */
    record Desk(DeskWindow window, CompletableFuture<Void> closed) {}

    private Desks() {}

    static Desk open(String name, Path userFolder, Questions questions) {
        Workshop workshop = new Workshop(
                ProgramVersion.ofThisBuild(),
                BuiltInCatalog::entries,
                () -> CHECKER,
                StandardFitter::new,
                new StandardLoader(),
                (scene, ledger, particulars, folder) ->
                        new Report("Shelterwright").write(scene, ledger, particulars, folder),
                Interrupts.NONE,
                (other, asked) -> {});
        Opened opened = new Inputs(() -> workshop.entries().get().catalog(), CHECKER.ruleSets()).toJudge(name);
        DeskWindow window = new DeskWindow(
                workshop,
                Session.answeredElsewhere(CHECKER, opened.layout()),
                new PreferencesFile(userFolder),
                opened,
                "",
                (stage, theme) -> questions);
        CompletableFuture<Void> closed = new CompletableFuture<>();
        window.show(() -> closed.complete(null));
        return new Desk(window, closed);
    }
}
