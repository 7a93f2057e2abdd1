package org.shelterwright.layouts.ledger.restraint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialItem;

/** After a move only what the move can touch is solved again, and that is. */
class HoldingsTest {
    private static final Place ON_CABINET = Trial.on("cabinet", 1150, 1050, 1000);

    private final Scene scene = Trial.in(Pushed.body(5000, 8000))
            .rules(Pushed.forward(1))
            .floor(
                    "cabinet",
                    Pushed.cabinet(100, "M10").support("top", Rect.ofMm(0, 0, 600, 400), 1000, false, 100.0),
                    1000,
                    1000)
            .put("box", box(60).support("lid", Rect.ofMm(0, 0, 300, 300), 200, false, 100.0), ON_CABINET)
            .put("can", box("can", 5), Trial.on("box", 1150, 1050, 1200))
            .floor("other", box("other", 10), 3000, 1000)
            .scene();

    private static TrialItem box(double kg) {
        return box("box", kg);
    }

    private static TrialItem box(String id, double kg) {
        return TrialItem.of(id, 300, 300, 200)
                .on(Surface.ON_UNIT, Surface.FLOOR)
                .mass(kg, Point.ofMm(150, 150, 100))
                .fixing(Point.ofMm(50, 50, 0), Face.BOTTOM, "M10")
                .fixing(Point.ofMm(250, 50, 0), Face.BOTTOM, "M10")
                .fixing(Point.ofMm(50, 250, 0), Face.BOTTOM, "M10")
                .fixing(Point.ofMm(250, 250, 0), Face.BOTTOM, "M10");
    }

    private static Holding of(Scene scene, String unit) {
        return Holdings.of(scene, Pushed.FASTENERS).all().stream()
                .filter(one -> one.unit().id().equals(unit))
                .findFirst()
                .orElseThrow();
    }

    private static Scene moved(Scene scene, String unit, Place to) {
        return scene.with(
                Objects.requireNonNull(scene.layout().placements().get(unit)).withStation(to));
    }

    @Test
    void whatAMoveDoesNotTouchIsNotSolvedAgain() {
        Holding cabinet = of(scene, "cabinet");
        Holding box = of(scene, "box");
        Holding other = of(scene, "other");

        Scene after = moved(scene, "other", Trial.onFloor(3050, 1000, QuarterTurn.R0));

        assertThat(of(after, "cabinet")).isSameAs(cabinet);
        assertThat(of(after, "box")).isSameAs(box);
        assertThat(of(after, "other")).isNotSameAs(other);
    }

    @Test
    void whatCarriesAMovedUnitInAnyNumberOfStepsIsSolvedAgain() {
        assertThat(of(scene, "cabinet").load().massKg()).isEqualTo(165);

        Scene shifted = moved(scene, "can", Trial.on("box", 1200, 1050, 1200));
        Scene off = moved(scene, "can", Trial.onFloor(2500, 500, QuarterTurn.R0));

        assertThat(of(shifted, "cabinet").load().x())
                .isGreaterThan(of(scene, "cabinet").load().x());
        assertThat(of(off, "cabinet").load().massKg()).isEqualTo(160);
        assertThat(of(off, "box").load().massKg()).isEqualTo(60);
        assertThat(of(scene, "cabinet").load().massKg()).as("and back").isEqualTo(165);
    }

    @Test
    void whatStandsOnAMovedUnitIsSolvedAgain() {
        Holding box = of(scene, "box");

        Scene after = moved(scene, "cabinet", Trial.onFloor(1050, 1000, QuarterTurn.R0));

        assertThat(of(after, "box")).isNotSameAs(box);
    }
}
