package org.shelterwright.layouts.ledger.transport.burden;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.transit.FloorRating;
import org.shelterwright.catalog.transit.FloorRating.Concentrated;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.transport.Gravity;
import org.shelterwright.layouts.transport.CarBuilder;
import org.shelterwright.layouts.transport.Mode;
import org.shelterwright.layouts.transport.SampleJourney;
import org.shelterwright.layouts.transport.TransportRig;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedPiece;
import org.shelterwright.layouts.transport.scene.Wheel;

/** What floors bear: under axles, on a length, under an area. */
class CarFloorTest {
    private static TransitCar floored(FloorRating floor) {
        return CarBuilder.like("lorry-platform").floor(floor).build();
    }

    private static Row pressed(@Nullable Double bearsKPa, double kg, double onTopKg) {
        return new TransportRig()
                .on(floored(new FloorRating(null, null, bearsKPa, List.of())))
                .by(Mode.ROAD, "road-eu", "lashing")
                .crate("a", 0, 0, 0, 2_000, 1_000, 1_000, kg)
                .crate("b", 0, 0, 1_000, 1_000, 1_000, 500, onTopKg)
                .row("floor-pressure");
    }

    /** 1 000 kg and 200 kg on top, on 2 m²: 1 200 · 9.80665 / 2 = 5 883.99 Pa (by hand; ISO 80000-3 for g). */
    @Test
    void aFloorIsPressedByWhatStandsOnItAndOnTop() {
        double kPa = 1_200 * Gravity.STANDARD / 2 / 1_000;

        assertThat(pressed(10.0, 1_000, 200).demand()).isCloseTo(5.88399, within(1e-9));
        assertThat(pressed(kPa, 1_000, 200).verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(pressed(kPa, 1_000, 200).mend()).isNull();
        Row over = pressed(5.0, 1_000, 200);
        assertThat(over.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(over.finding()).isEqualTo("Crate a presses with 5.88 kPa on the floor of Car, which bears 5 kPa.");
        assertThat(over.mend()).isEqualTo("Set it on shoring that spreads it, or take a stronger car.");
    }

    @Test
    void onlyHoldsAndFloorsThatStateItAreAsked() {
        assertThat(pressed(null, 1_000, 200).doesNotApply()).isTrue();
        Row hold = new TransportRig()
                .on(CarBuilder.like("hold-medium").floor(FloorRating.UNKNOWN).build())
                .by(Mode.AIR, "air-14-cfr-25")
                .crate("a", 0, 500, 0, 2_000, 1_000, 1_000, 100.0)
                .row("floor-pressure");
        assertThat(hold.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(hold.finding())
                .contains("states no pressure. Give \"pressureKPa\" in the floor of car like-hold-medium.");
    }

    @Test
    void aPressureOfAnUnknownMassIsNotAssessed() {
        Row row = new TransportRig()
                .on(floored(new FloorRating(null, null, 10.0, List.of())))
                .by(Mode.ROAD, "road-eu", "lashing")
                .crate("a", 0, 0, 0, 2_000, 1_000, 1_000, null)
                .row("floor-pressure");

        assertThat(row.finding()).isEqualTo("Crate a has no mass. Give massKg of piece a.");
    }

    /** Of a length, the larger of the sheet's concentrated load and the load per metre counts (common practice). */
    @Test
    void aLengthBearsTheLargerOfBothFigures() {
        assertThat(onLength(new FloorRating(null, 2_000.0, null, List.of()))).isEqualTo(6_000);
        assertThat(onLength(new FloorRating(null, 2_000.0, null, List.of(new Concentrated(2_000_000, 7_000)))))
                .isEqualTo(7_000);
        assertThat(onLength(new FloorRating(null, 3_000.0, null, List.of(new Concentrated(2_000_000, 7_000)))))
                .isEqualTo(9_000);
        assertThat(onLength(new FloorRating(null, null, null, List.of(new Concentrated(2_000_000, 7_000)))))
                .isEqualTo(7_000);
    }

    private static double onLength(FloorRating floor) {
        Double capacity = new TransportRig()
                .on(floored(floor))
                .by(Mode.ROAD, "road-eu", "lashing")
                .crate("a", 0, 0, 0, 3_000, 1_000, 1_000, 100.0)
                .row("concentrated-load")
                .capacity();
        assertThat(capacity).isNotNull();
        return capacity;
    }

    /** The vehicle and the trailer of the sample on a wagon whose floor takes 13 t under one axle. */
    @Test
    void eachVehicleStandsWithItsHeaviestAxle() {
        LegScene rail = SampleJourney.loaded().legs().get(1);
        List<Row> rows = TransportRig.rows(rail, "floor-axle");

        assertThat(rows).extracting(row -> row.units().get(0)).containsExactly("river-post", "generator-trailer");
        for (Row row : rows) {
            PlacedPiece piece = rail.loads().stream()
                    .flatMap(load -> load.piece(row.units().get(0)).stream())
                    .findFirst()
                    .orElseThrow();
            double heaviest = piece.shape().wheels().stream()
                    .mapToDouble(Wheel::loadKg)
                    .max()
                    .orElseThrow();
            double uncertain = piece.shape().mostKg()
                    / Objects.requireNonNull(piece.shape().massKg());
            assertThat(uncertain).isGreaterThan(1);
            assertThat(row.demand()).isCloseTo(heaviest * uncertain, within(1e-9));
            assertThat(row.capacity()).isEqualTo(13_000);
            assertThat(row.verdict()).isEqualTo(Verdict.MET);
            assertThat(row.mend()).isNull();
        }
    }

    @Test
    void anAxleTooHeavyForTheFloorIsToldAndAnUnratedFloorIsNotAssessed() {
        double heaviest = heaviest(onFloor(13_000.0));

        assertThat(truck(onFloor(heaviest)).verdict()).isEqualTo(Verdict.CLOSE);
        Row over = truck(onFloor(heaviest - 1));
        assertThat(over.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(over.mend()).isEqualTo("Spread its wheels on planks or steel, or take a stronger car.");
        assertThat(over.finding())
                .matches("The .+ of .+ bears \\d+ kg on the floor of Wagon 1, which takes \\d+ kg\\.");
        assertThat(truck(onFloor(null)).verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(truck(onFloor(null)).finding())
                .contains(" states no axle load. Give \"axleKg\" in the floor of car ");
    }

    private static LegScene onFloor(@Nullable Double axleKg) {
        FloorRating floor = new FloorRating(axleKg, 4_000.0, null, List.of());
        return SampleJourney.loadedOn(car -> car.id().equals("flat-wagon-4-axle")
                        ? CarBuilder.like(car).floor(floor).build()
                        : car)
                .legs()
                .get(1);
    }

    private static Row truck(LegScene rail) {
        return TransportRig.rows(rail, "floor-axle").get(0);
    }

    private static double heaviest(LegScene rail) {
        Double demand = truck(rail).demand();
        assertThat(demand).isNotNull();
        return demand;
    }
}
