package org.shelterwright.app;

import java.time.LocalDate;
import org.shelterwright.app.sheet.Particulars;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.scene.Scene;

/** The scene, ledger and particulars of a test layout. */
public record TestIssue(Scene scene, Ledger ledger, Particulars particulars) {

    public static TestIssue riverPost() {
        return of(TestLayout.riverPost());
    }

    public static TestIssue of(Layout layout) {
        Checker checker = Checker.standard();
        return new TestIssue(
                checker.scene(layout),
                checker.check(layout),
                new Particulars(
                        "Varn Valley Flood Service", "R. Fitter", "not approved", "A", LocalDate.of(2026, 1, 15)));
    }
}
