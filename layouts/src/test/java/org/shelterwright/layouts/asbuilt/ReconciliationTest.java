package org.shelterwright.layouts.asbuilt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.layouts.asbuilt.Weighing.Other;
import org.shelterwright.layouts.asbuilt.Weighing.Support;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.scene.Scene;

class ReconciliationTest {
    private static final int[][] PADS = {{0, 0}, {4_200_000, 0}, {0, 2_300_000}, {4_200_000, 2_300_000}};

    private final Scene scene = scene();

    private static Scene scene() {
        Layout layout =
                LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();
        return Checker.standard().scene(layout);
    }

    /** Four pads that read what a mass and centre put on them: shares of a rectangle, in its own plane. */
    private Weighing weighing(double kg, double xM, double yM, List<Other> others) {
        double u = xM / 4.2;
        double v = yM / 2.3;
        double[] shares = {(1 - u) * (1 - v), u * (1 - v), (1 - u) * v, u * v};
        List<Support> supports = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            supports.add(new Support("pad " + i, PADS[i][0], PADS[i][1], kg * shares[i], null, 0.5));
        }
        return new Weighing("river-post", "2026-01-15", null, supports, 0, null, others);
    }

    private Balance predicted() {
        return Prediction.of(scene, weighing(1, 1, 1, List.of())).balance();
    }

    @Test
    void agreesWithWhatWasPredicted() {
        Balance p = predicted();

        Reconciliation found = Reconciliation.of(
                weighing(p.kg(), p.xM(), p.yM(), List.of()), Prediction.of(scene, weighing(1, 1, 1, List.of())));

        assertThat(found.differs()).isFalse();
        assertThat(found.unlisted()).isNull();
        assertThat(found.corrections()).isEmpty();
    }

    @Test
    void findsWhereAnUnlistedMassIsAndWhatStandsThere() {
        Balance p = predicted();
        double extra = 150;
        double kg = p.kg() + extra;
        double x = (p.kg() * p.xM() + extra * 2.15) / kg;
        double y = (p.kg() * p.yM() + extra * 1.95) / kg;
        Weighing weighing = weighing(kg, x, y, List.of());

        Reconciliation found = Reconciliation.of(weighing, Prediction.of(scene, weighing));

        assertThat(found.differs()).isTrue();
        Balance unlisted = found.unlisted();
        assertThat(unlisted).isNotNull();
        assertThat(unlisted.kg()).isCloseTo(150, within(1e-6));
        assertThat(unlisted.xM()).isCloseTo(2.15, within(1e-6));
        assertThat(unlisted.yM()).isCloseTo(1.95, within(1e-6));
        assertThat(found.near().get(0).name()).isEqualTo("Telemetry rack 1");
    }

    @Test
    void theCorrectionsExplainTheScales() {
        Balance p = predicted();
        Weighing weighing = weighing(p.kg() + 200, p.xM() + 0.02, p.yM(), List.of());
        Prediction prediction = Prediction.of(scene, weighing);

        Reconciliation found = Reconciliation.of(weighing, prediction);

        assertThat(found.corrections()).isNotEmpty();
        double sum = found.corrections().stream()
                .mapToDouble(Reconciliation.Correction::kg)
                .sum();
        // The eight largest of them; the rest is small.
        assertThat(sum).isBetween(100.0, 230.0);
    }

    @Test
    void whatElseStoodOnTheScalesIsTakenInto() {
        Balance p = predicted();
        Other driver = new Other("driver", 75, 1, 1_000_000, 1_000_000, 500_000);
        double kg = p.kg() + 75;
        Weighing weighing = weighing(kg, (p.kg() * p.xM() + 75) / kg, (p.kg() * p.yM() + 75) / kg, List.of(driver));

        assertThat(Reconciliation.of(weighing, Prediction.of(scene, weighing)).differs())
                .isFalse();
    }
}
