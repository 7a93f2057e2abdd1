package org.shelterwright.app;

import org.shelterwright.app.about.ProgramVersion;
import org.shelterwright.app.cli.Program;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.workshop.EndRequests;
import org.shelterwright.app.cli.workshop.Interrupts;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.app.desk.window.DeskStart;
import org.shelterwright.app.report.Report;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.load.StandardLoader;

/** Starts the program; the one place where its parts are put together. */
public final class Shelterwright {

    private Shelterwright() {}

    /**
     * Runs the command line and ends the process with its exit status.
     *
     * @param arguments what was typed after the name of the program
     */
    public static void main(String[] arguments) {
        EndRequests requests = new EndRequests();
        int status = program(Terminal.ofThisProcess(), requests).run(arguments).number();
        requests.ended(status);
        System.exit(status);
    }

    /**
     * Puts the program together.
     *
     * @param terminal where it prints
     * @param interrupts how it is asked to end
     */
    public static Program program(Terminal terminal, Interrupts interrupts) {
        return new Program(workshop(interrupts), terminal);
    }

    private static Workshop workshop(Interrupts interrupts) {
        ProgramVersion version = ProgramVersion.ofThisBuild();
        return new Workshop(
                version,
                BuiltInCatalog::entries,
                Checker::standard,
                StandardFitter::new,
                new StandardLoader(),
                (scene, ledger, particulars, folder) ->
                        new Report(version.line()).write(scene, ledger, particulars, folder),
                interrupts,
                DeskStart::run);
    }
}
