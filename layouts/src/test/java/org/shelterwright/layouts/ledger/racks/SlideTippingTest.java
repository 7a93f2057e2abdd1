package org.shelterwright.layouts.ledger.racks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.body.Strength;
import org.shelterwright.catalog.item.Interior;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.rack.Airflow;
import org.shelterwright.catalog.rack.RackBay;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.restraint.Fasteners;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;
import org.shelterwright.layouts.trial.TrialPiece;

/**
 * Tipping while a drawer is out, worked by hand: a rack 600 mm deep on four M10 bolts 50 mm from its edges, 40 kg empty with its
 * centre 300 mm from the rear; a drawer 300 mm deep whose centre, pushed in, lies 420 mm from the rear (550 - 280 + 150).
 *
 * <p>The rule is common practice: one drawer at a time, a factor of 1.5 on its moment, the base turns about its front edge, the
 * pull of a bolt is M·L/ΣL² with the distances L from that edge (0.05 and 0.55 m, two of each: ΣL² = 0.61 m²).
 */
class SlideTippingTest {
    private static final double G = 9.80665;

    private static Row row(double drawerKg, int travelMm, double pullOutN) {
        RackBay bay = new RackBay(
                "bay",
                20,
                Point.ofMm(550, 300, 100),
                Face.FRONT,
                50_000,
                540_000,
                500_000,
                100.0,
                40.0,
                Airflow.FRONT_TO_REAR,
                300.0,
                List.of());
        MassData empty = new MassData(40.0, Point.ofMm(300, 300, 500), MassBasis.WEIGHED, 0.0, 0.0, null);
        TrialItem rack = TrialItem.of("rack", 600, 600, 1100)
                .fixing(Point.ofMm(50, 50, 0), Face.BOTTOM, "M10")
                .fixing(Point.ofMm(50, 550, 0), Face.BOTTOM, "M10")
                .fixing(Point.ofMm(550, 50, 0), Face.BOTTOM, "M10")
                .fixing(Point.ofMm(550, 550, 0), Face.BOTTOM, "M10")
                .interior(new Interior(empty, List.of(bay)));
        TrialBody body = TrialBody.of(4000, 2000, 2000)
                .grid(
                        "floor grid",
                        Face.BOTTOM,
                        Point.ofMm(50, 50, 0),
                        Axis.X,
                        50,
                        79,
                        39,
                        new Strength(pullOutN, 8000.0, null));
        List<Row> rows = Trial.in(body)
                .rules("shelter-common")
                .floor("rack", rack, 1000, 500)
                .piece(
                        PieceSpec.of("drawer", "Drawer", "drawer"),
                        TrialPiece.racked("drawer", 2, 300)
                                .slides(travelMm, "screws")
                                .kg(drawerKg)
                                .build(),
                        PiecePlace.inRack("drawer", "rack", "bay", 1))
                .rows(new SlideTipping(Fasteners.builtIn()));
        assertThat(rows).hasSize(1);
        return rows.get(0);
    }

    /**
     * 60 kg, 600 mm out. Centre with the drawer in: (40 · 300 + 60 · 420) / 100 = 372 mm; its moment out, with the factor:
     * 60 · 600 · 1.5 / 100 = 540 mm more, so 912 mm, 312 mm before the front edge. M = 100 · 9.80665 · 0.312 = 305.97 N·m; each
     * rear bolt pulls 305.97 · 0.55 / 0.61 = 275.87 N.
     */
    @Test
    void theRearBoltsHoldTheMomentOfTheDrawerThatIsOut() {
        double momentNm = 100 * G * 0.312;
        double pullN = momentNm * 0.55 / 0.61;
        assertThat(pullN).isCloseTo(275.87, within(0.01));

        Row holds = row(60, 600, 400);
        Row breaks = row(60, 600, 250);

        assertThat(holds.demand()).isCloseTo(pullN / 400, within(1e-6));
        assertThat(holds.verdict()).isEqualTo(Verdict.MET);
        assertThat(breaks.demand()).isCloseTo(pullN / 250, within(1e-6));
        assertThat(breaks.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(breaks.finding())
                .startsWith("With Drawer slid out, Rack uses 110")
                .endsWith("of what its fixings bear, with a factor of 1.5 on the moment.");
        assertThat(breaks.mend()).isEqualTo("Bolt Rack to stronger or wider hard points, or brace it to a wall.");
    }

    /**
     * 20 kg, 400 mm out: (40 · 300 + 20 · 420) / 60 = 340 mm, and 20 · 400 · 1.5 / 60 = 200 mm more: 540 mm, still 60 mm behind the
     * front edge, so that the rack would stand without a bolt.
     */
    @Test
    void aLightDrawerPullsNoBolt() {
        assertThat(row(20, 400, 250).demand()).isCloseTo(0, within(1e-9));
    }

    /** The edge: 340 + 20 · t · 1.5 / 60 = 600 gives t = 520 mm; 4 mm more pull the rear bolts by 60 g · 0.002 · 0.55 / 0.61. */
    @Test
    void atTheEdgeTheBoltsBeginToPull() {
        assertThat(row(20, 516, 250).demand()).isCloseTo(0, within(1e-9));
        assertThat(row(20, 524, 250).demand()).isCloseTo(60 * G * 0.002 * 0.55 / 0.61 / 250, within(1e-6));
    }
}
