package org.shelterwright.layouts.handling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Interior;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.rack.Airflow;
import org.shelterwright.catalog.rack.RackBay;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.boltdown.StepWords;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.handling.Handling.Means;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;
import org.shelterwright.layouts.trial.TrialPiece;

/** A rack of 40 kg on the floor: the trolley takes 500 kg. */
class CarryingTest {
    private static BoltDownStep rackWith(double... kg) {
        RackBay bay = new RackBay(
                "bay",
                20,
                Point.ofMm(550, 300, 100),
                Face.FRONT,
                50_000,
                540_000,
                500_000,
                1000.0,
                400.0,
                Airflow.FRONT_TO_REAR,
                300.0,
                List.of());
        MassData empty = MassData.of(40, Point.ofMm(300, 300, 500), MassBasis.WEIGHED);
        Trial trial = Trial.in(TrialBody.of(4000, 2000, 2000).rearDoor(500, 1500))
                .rules("shelter-common")
                .floor(
                        "rack",
                        TrialItem.of("rack", 600, 600, 1100).bolted().interior(new Interior(empty, List.of(bay))),
                        1000,
                        600);
        for (int i = 0; i < kg.length; i++) {
            String id = "piece-" + (i + 1);
            trial.piece(
                    PieceSpec.of(id, "Piece " + (i + 1), id),
                    TrialPiece.racked(id, 2, 400).kg(kg[i]).build(),
                    PiecePlace.inRack(id, "rack", "bay", 5 - 2 * i));
        }
        var layout = trial.layout().withBoltDown(BoltDownOrder.of(List.of("rack")));
        return BoltDownPlan.of(Scene.of(layout, Rules.of(layout.brief(), RuleSets.builtIn())))
                .orElseThrow()
                .step("rack")
                .orElseThrow();
    }

    @Test
    void aRackIsFilledOnTheBenchLowestPieceFirst() {
        BoltDownStep step = rackWith(100, 90);

        assertThat(step.carried().filled()).extracting(InRack::id).containsExactly("piece-2", "piece-1");
        assertThat(step.carried().later()).isEmpty();
        assertThat(step.carried().handling().means()).isEqualTo(Means.TROLLEY);
        assertThat(step.carried().handling().massKg()).isGreaterThanOrEqualTo(230);
        assertThat(step.minutesBench()).as("two pieces").isEqualTo(20);
        assertThat(StepWords.fittings(step))
                .containsExactly(
                        "On the bench, before it comes in, about 20 min: fit U 3-4 Piece 2 and U 5-6 Piece 1.");
        assertThat(step.checks()).noneMatch(check -> check.text().endsWith("fitted"));
    }

    @Test
    void aRackTooHeavyForTheTrolleyIsFilledAtItsPlace() {
        BoltDownStep light = rackWith(100, 90);

        BoltDownStep step = rackWith(240, 240);

        assertThat(step.carried().filled()).isEmpty();
        assertThat(step.carried().later()).extracting(InRack::id).containsExactly("piece-2", "piece-1");
        assertThat(step.carried().handling().massKg()).as("empty").isCloseTo(40, within(3.0));
        assertThat(step.carried().handling().held()).isTrue();
        assertThat(step.minutesBench()).isZero();
        assertThat(step.minutesAt() - light.minutesAt())
                .as("ten minutes a piece, and a check each")
                .isCloseTo(22, within(1e-9));
        assertThat(StepWords.fittings(step))
                .containsExactly("Once it is bolted: fit U 3-4 Piece 2 and U 5-6 Piece 1."
                        + " With the pieces it would be too heavy to bring in.");
        assertThat(step.checks())
                .filteredOn(check -> check.text().endsWith("fitted"))
                .extracting(check -> check.text())
                .containsExactly("Piece 2 fitted", "Piece 1 fitted");
        assertThat(step.tools()).contains("driver for rack screws", "tape measure", "floor trolley");
    }
}
