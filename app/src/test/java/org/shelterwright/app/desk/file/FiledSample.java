package org.shelterwright.app.desk.file;

import java.util.List;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.LimitBook;

/** The sample that tests of filing work on, with a checker that judges nothing. */
final class FiledSample {
    static final Checker CHECKER =
            new Checker(new LimitBook(List.of()), Checker.standard().ruleSets());
    static final Inputs INPUTS = new Inputs(() -> BuiltInCatalog.entries().catalog(), CHECKER.ruleSets());
    static final Layout LAYOUT = INPUTS.toJudge("sample:river-post").layout();
    static final String UNIT = LAYOUT.placements().keySet().iterator().next();

    private FiledSample() {}
}
