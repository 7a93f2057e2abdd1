package org.shelterwright.app.cli.verb;

import java.util.function.Supplier;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.layouts.check.Checker;

/** A layout in which something is placed. */
final class LayoutInput {
    private LayoutInput() {}

    /**
     * Opens a layout.
     *
     * @throws InputException if it is missing or wrong, or nothing is placed in it
     */
    static Opened open(String file, Supplier<Catalog> catalog, Checker checker) {
        Opened opened = new Inputs(catalog, checker.ruleSets()).toJudge(file);
        if (opened.layout().placements().isEmpty()) {
            throw new InputException(
                    file,
                    "Nothing is placed in it, so there is nothing to look at. Fit it first: shelterwright fit " + file
                            + ".");
        }
        return opened;
    }
}
