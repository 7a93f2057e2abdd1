package org.shelterwright.app.cli.workshop;

import java.util.function.Function;
import java.util.function.Supplier;
import org.shelterwright.app.about.ProgramVersion;
import org.shelterwright.catalog.json.CatalogEntries;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.solver.fit.Fitter;
import org.shelterwright.solver.load.Loader;

/**
 * The parts of the program that the verbs use.
 *
 * @param entries reads the built-in catalog; called once a run at most by each verb
 * @param checker makes the checker of layouts
 * @param fitter makes what finds places, on a checker
 * @param loader finds loads
 * @param documents writes the documents of a layout
 * @param interrupts tells that the program is asked to end
 * @param desk opens the window
 */
public record Workshop(
        ProgramVersion version,
        Supplier<CatalogEntries> entries,
        Supplier<Checker> checker,
        Function<Checker, Fitter> fitter,
        Loader loader,
        Documents documents,
        Interrupts interrupts,
        DeskOpening desk) {}
