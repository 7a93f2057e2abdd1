package org.shelterwright.layouts.ledger.transport.burden;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.catalog.transit.WheelGroup;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.transport.CarBuilder;
import org.shelterwright.layouts.transport.Crate;
import org.shelterwright.layouts.transport.Mode;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.TransportRig;

/** What is said where a car, a rule set or a load lacks a figure: never "met". */
class CarDataTest {
    private static TransportRig onRoad(TransitCar car) {
        return new TransportRig()
                .on(car)
                .by(Mode.ROAD, "road-eu", "lashing")
                .crate("a", 3_000, 200, 0, 2_000, 2_000, 1_000, 4_000.0);
    }

    private static TransportRig onRails(TransitCar car) {
        return new TransportRig().on(car).crate("a", 5_250, 370, 0, 8_000, 2_000, 1_000, 10_000.0);
    }

    private static void notAssessed(Row row, String sentence) {
        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding()).isEqualTo(sentence);
    }

    @Test
    void aCarWithoutAGreatestLoadIsNotAssessed() {
        notAssessed(
                onRoad(CarBuilder.like("lorry-platform").payloadKg(null).build())
                        .row("load"),
                "The Lorry with platform, two axles states no greatest load. Give \"payloadKg\", \"grossRatingKg\" or"
                        + " \"loadLimits\" in car like-lorry-platform.");
    }

    @Test
    void anUnratedAxleOnRoadIsNotAssessedAndOneOnRailsIsBoundByItsLine() {
        notAssessed(
                onRoad(CarBuilder.like("lorry-platform").wheels(rated(1, null)).build())
                        .row("axle"),
                "The rear axle of the Lorry with platform, two axles states no axle rating. Give \"axleRatingKg\" in car"
                        + " like-lorry-platform.");
        Row line = onRails(CarBuilder.like("flat-wagon-4-axle")
                        .wheels(rated(2, null))
                        .build())
                .row("axle");
        assertThat(line.capacity()).as("C3: 20 t on an axle, EN 15528 (seen)").isEqualTo(20_000);
        assertThat(line.source().document()).isEqualTo("EN 15528");
        Row own = onRails(CarBuilder.like("flat-wagon-4-axle")
                        .wheels(rated(2, 18_000.0))
                        .build())
                .row("axle");
        assertThat(own.capacity()).isEqualTo(18_000);
        assertThat(own.finding()).endsWith(" by its rating.");
        assertThat(own.source().document()).isNotEqualTo("EN 15528");
    }

    /** Of two groups the one with the greater use governs, not the one that bears more. */
    @Test
    void theAxleNearestToItsRatingGoverns() {
        List<WheelGroup> unlike = List.of(
                new WheelGroup("rear axle", 2_300_000, 1, 0, 1_830_000, 12_000.0),
                new WheelGroup("front axle", 7_900_000, 1, 0, 2_050_000, 6_000.0));
        Row row =
                onRoad(CarBuilder.like("lorry-platform").wheels(unlike).build()).row("axle");

        assertThat(row.finding()).startsWith("Each axle of front axle bears ");
        assertThat(row.capacity()).isEqualTo(6_000);
    }

    private static List<WheelGroup> rated(int axles, @Nullable Double kg) {
        int spacing = axles == 1 ? 0 : 1_800_000;
        return List.of(
                new WheelGroup("rear axle", 1_820_000, axles, spacing, 1_500_000, kg),
                new WheelGroup("front axle", 7_900_000, axles, spacing, 1_500_000, kg));
    }

    @Test
    void threeWheelGroupsAreNotDeterminedByStatics() {
        List<WheelGroup> three = List.of(
                new WheelGroup("1", 1_000_000, 1, 0, 1_500_000, 20_000.0),
                new WheelGroup("2", 9_000_000, 1, 0, 1_500_000, 20_000.0),
                new WheelGroup("3", 17_000_000, 1, 0, 1_500_000, 20_000.0));

        notAssessed(
                onRails(CarBuilder.like("flat-wagon-4-axle").wheels(three).build())
                        .row("end-ratio"),
                "The loads of 3 wheel groups of the Flat wagon, four axles, long are not determined by statics; two can be"
                        + " told.");
    }

    @Test
    void withoutALengthOverBuffersTheLoadPerMetreIsNotAssessed() {
        notAssessed(
                onRails(CarBuilder.like("flat-wagon-4-axle").lengthOver(null).build())
                        .row("metre-load"),
                "The length over buffers of the Flat wagon, four axles, long is not known. Give \"lengthOver\" in car"
                        + " like-flat-wagon-4-axle.");
    }

    @Test
    void limitsOfWagonsDoNotBindALorry() {
        TransportRig lorry = onRoad(CarBuilder.like("lorry-platform").build());

        for (String limit : List.of("end-ratio", "wheel-ratio", "metre-load")) {
            assertThat(lorry.row(limit).doesNotApply()).as(limit).isTrue();
        }
        assertThat(lorry.row("axle").doesNotApply()).isFalse();
    }

    @Test
    void aContainerWhoseRulesSetNoSharesIsNotAssessed() {
        TransportRig rig = new TransportRig()
                .on("container-1cc")
                .by(Mode.ROAD, "road-eu", "lashing")
                .crate("a", 0, 165, 0, 5_000, 2_000, 1_000, 20_000.0);

        assertThat(rig.row("half-length").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(rig.row("half-length").finding()).contains("(transport.half-length-share)");
        assertThat(rig.rows("load-centre"))
                .hasSize(2)
                .allMatch(row -> row.verdict() == Verdict.NOT_ASSESSED)
                .extracting(Row::mend)
                .anyMatch(mend -> mend.contains("transport.off-along"))
                .anyMatch(mend -> mend.contains("transport.off-across"));
    }

    @Test
    void theCentreOfALoadOfUnknownMassIsNotAssessed() {
        TransportRig rig = new TransportRig()
                .on("container-1cc")
                .by(Mode.ROAD, "road-eu", "stowage-ctu")
                .crate("a", 0, 165, 0, 5_000, 2_000, 1_000, null);

        assertThat(rig.rows("load-centre"))
                .hasSize(2)
                .allMatch(row -> row.finding().equals("Crate a has no mass. Give massKg of piece a."));
    }

    @Test
    void anOpenCarHasNoCentreToKeepNorHalvesToShare() {
        TransportRig lorry = onRoad(CarBuilder.like("lorry-platform").build());

        assertThat(lorry.row("load-centre").doesNotApply()).isTrue();
        assertThat(lorry.row("half-length").doesNotApply()).isTrue();
    }

    /** Of a mass that may be 1 t more, all of it over bogie 1: (12 250 + 24 500 + 1 000) / 2 on each axle (by hand). */
    @Test
    void anUncertainMassCountsOnTheAxles() {
        Crate crate = TransportRig.crate("a", Size.ofMm(3_000, 2_000, 1_000), 24_500.0)
                .crate();
        Crate uncertain = new Crate(
                crate.size(), crate.massKg(), 1_000.0, crate.centre(), crate.underside(), null, null, false, List.of());
        TransportRig rig = new TransportRig().piece(Piece.ofCrate("a", "Crate a", uncertain), 320, 370, 0);

        assertThat(rig.row("axle").demand()).isCloseTo(37_750 / 2.0, within(1e-6));
        assertThat(rig.row("end-ratio").demand()).as("of what is stated").isCloseTo(3, within(1e-9));
    }
}
