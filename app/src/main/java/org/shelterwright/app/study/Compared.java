package org.shelterwright.app.study;

import java.util.Objects;
import java.util.stream.Collectors;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.study.results.RunResult;

/** One of the runs that are compared: its result, its layout, and the ledger of a fresh check. */
public record Compared(RunResult result, Scene scene, Ledger ledger) {
    /** Checks the layout of a run again. */
    public static Compared of(RunResult result, Layout layout, Checker checker) {
        return new Compared(result, checker.scene(layout), checker.check(layout));
    }

    /** Such as "Run 17". */
    String name() {
        return "Run " + result.run();
    }

    /** Its settings in words, such as "body box-6000, cooler wall". */
    String settings() {
        return result.settings().entrySet().stream()
                .map(one -> one.getKey() + " " + Objects.requireNonNull(one.getValue()))
                .collect(Collectors.joining(", "));
    }
}
