package org.shelterwright.layouts.ledger.cables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.shelterwright.layouts.ledger.cables.CablePost.at;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.brief.Duty;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Run;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.statement.MassLine;
import org.shelterwright.layouts.statement.MassStatement;

class CableLimitsTest {
    private static CablePost routed() {
        // Ports: x = 600 - 300 = 300 from the rack's corner. Laid: 0.9 + 0.05 + 2 + 0.05 + 0.9 = 3.9 m.
        return new CablePost()
                .power("w1", "supply-3x1.5", 6_000_000)
                .byTray("w1", "supply-3x1.5", "power tray", 300, 1800);
    }

    @Test
    void aBriefWithoutWiresHasNoLimitOfCables() {
        assertThat(CableLimits.all().stream().filter(CableLimit.class::isInstance))
                .hasSize(CableLimits.all().size() - 1)
                .allSatisfy(limit -> {
                    Row row = new CablePost().row(limit.id());
                    assertThat(row.doesNotApply()).isTrue();
                    assertThat(row.finding()).isEqualTo("The brief asks for no wires.");
                });
    }

    @Test
    void aUnitBeforeAPortIsBrokenIfAWireEndsThere() {
        CablePost post = new CablePost().power("w1", "supply-3x1.5", null).backToTheSecond(10);

        Row row = post.row("cables.plug-free");

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.demand()).isEqualTo(15);
        assertThat(row.finding())
                .isEqualTo("Rack 2 stands 15 mm into the room for the plug of port \"power\" of Rack 1.");
        assertThat(row.mend()).isEqualTo("Move Rack 2 at least 15 mm forward.");
        assertThat(new CablePost().backToTheSecond(10).row("cables.plug-free").verdict())
                .isEqualTo(Verdict.MET);
        assertThat(new CablePost()
                        .power("w1", "supply-3x1.5", null)
                        .backToTheSecond(25)
                        .row("cables.plug-free")
                        .verdict())
                .isEqualTo(Verdict.MET);
        assertThat(new CablePost()
                        .power("w1", "supply-3x1.5", null)
                        .backToTheSecond(25)
                        .limit("cables.plug-depth", 60)
                        .row("cables.plug-free")
                        .finding())
                .isEqualTo("Rack 2 stands 35 mm into the room for the plug of port \"power\" of Rack 1.");
    }

    @Test
    void aWireWithoutARouteIsNotAssessed() {
        CablePost post = new CablePost().power("w1", "supply-3x1.5", null);

        assertThat(post.row("cables.routed").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(post.row("cables.routed").finding())
                .isEqualTo(
                        "None of the 1 wire has a route, so that lengths, fill, drop and the mass of cables are not known.");
        assertThat(post.row("cables.drop").finding())
                .isEqualTo("No wire has a route that could be judged. Route the wires first.");
        assertThat(post.row("cables.connectors").verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void aRouteIsMeasuredWithItsSpare() {
        Row row = routed().row("cables.length");

        // (3.9 + 2 x 0.15) x 1.05 = 4.41 m.
        assertThat(row.demand()).isEqualTo(4.41);
        assertThat(row.finding())
                .isEqualTo("Wire w1 to Rack 2, power takes 4.41 m with its spare, of 6 m: 1.59 m are left.");
        assertThat(routed().row("cables.routed").finding())
                .isEqualTo("All 1 wire have a route: 3.9 m laid in the body.");
    }

    @Test
    void aWireOfExactlyItsGreatestLengthIsNotBroken() {
        CablePost post = new CablePost().power("w1", "supply-3x1.5", 4_410_000);
        post.byTray("w1", "supply-3x1.5", "power tray", 300, 1800);
        assertThat(post.row("cables.length").verdict()).isEqualTo(Verdict.CLOSE);

        CablePost shorter = new CablePost().power("w1", "supply-3x1.5", 4_400_000);
        shorter.byTray("w1", "supply-3x1.5", "power tray", 300, 1800);
        assertThat(shorter.row("cables.length").verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(shorter.row("cables.length").finding()).endsWith("of 4.4 m: 0.01 m too much.");
    }

    @Test
    void aRouteThatAUnitHasLeftIsNotAssessedAndSaysHowFarOff() {
        Row row = routed().move(1200).row("cables.routed");

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding()).isEqualTo("The route of wire w1 ends 200 mm from Rack 1, power.");
        assertThat(row.units()).containsExactly("rack-1", "rack-2");
    }

    @Test
    void aRouteBesideItsTrayOrWithAGapIsNone() {
        CablePost beside = new CablePost().power("w1", "supply-3x1.5", null);
        beside.byTray("w1", "supply-3x1.5", "signal tray", 300, 1800);
        assertThat(beside.row("cables.routed").finding())
                .isEqualTo("The route of wire w1 does not hold: it does not lie in the tray signal tray.");

        CablePost gap = new CablePost().power("w1", "supply-3x1.5", null);
        gap.route(
                "w1",
                "supply-3x1.5",
                Run.free(List.of(at(1300, 0, 900), at(1300, 0, 1800))),
                Run.free(List.of(at(3300, 0, 1800), at(3300, 0, 900))));
        assertThat(gap.row("cables.routed").finding())
                .isEqualTo("The route of wire w1 does not hold: its runs do not join.");
    }

    @Test
    void aCableThroughAUnitIsBrokenAndOneOnItsFaceIsNot() {
        CablePost through = new CablePost().power("w1", "supply-3x1.5", null);
        through.route(
                "w1",
                "supply-3x1.5",
                Run.free(List.of(at(1300, 0, 900), at(1300, 100, 900), at(3300, 100, 900), at(3300, 0, 900))));

        assertThat(through.rows("cables.clear"))
                .hasSize(2)
                .allSatisfy(row -> assertThat(row.verdict()).isEqualTo(Verdict.BROKEN));
        assertThat(through.rows("cables.clear"))
                .extracting(Row::finding)
                .contains("Wire w1 to Rack 2, power passes through Rack 1, 100 mm from its face.");
        assertThat(routed().row("cables.clear").finding())
                .isEqualTo("No cable passes through a unit or out of the body.");
        assertThat(RunsClear.depth(at(0, 0, 0), at(10, 0, 0), Box.ofMm(2, 0, 0, 5, 5, 5)))
                .isZero();
    }

    @Test
    void aTrayIsFilledByTheOutsidesOfItsCables() {
        // 50 x 20 = 1000 mm² inside; a cable of 27 mm has 572.6 mm².
        CablePost post = new CablePost().power("w1", "battery-2x50", null);
        post.byTray("w1", "battery-2x50", "power tray", 300, 1800);

        Row row = post.row("cables.fill");

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.demand()).isCloseTo(Math.PI / 4 * 27 * 27 / 1000, within(1e-9));
        assertThat(row.capacity()).isEqualTo(0.4);
        assertThat(row.finding())
                .isEqualTo(
                        "The power tray is filled to 57.3 % of 40 % where it is fullest, by 1 cable (w1): 173 mm² too"
                                + " much.");
    }

    @Test
    void aPowerCableInASignalTrayIsBroken() {
        CablePost post = new CablePost().power("w1", "supply-3x1.5", null);
        post.byTray("w1", "supply-3x1.5", "signal tray", 300, 1900);

        Row row = post.row("cables.class");

        assertThat(row.finding())
                .isEqualTo("Wire w1 to Rack 2, power is a power cable and lies in the signal tray, which is for signal,"
                        + " radio-frequency.");
        assertThat(row.place()).isNotNull();
    }

    @Test
    void powerAlongSignalIsMeasuredWhereNoScreenPartsThem() {
        CablePost post = routed();
        post.wire(new Wire("w2", "rack-1/network", "rack-2/network", "data-4x2", null));
        post.byTray("w2", "data-4x2", "signal tray", 500, 1900);

        // Trays 100 mm apart: 2 m less 0.2 m side by side; the outsides are 100 - 4.4 - 3.15 mm apart.
        Row row = post.row("cables.separation");

        assertThat(row.demand()).isEqualTo(1.8);
        assertThat(row.verdict()).isEqualTo(Verdict.MET);
        assertThat(post.limit("cables.parallel", 1500).row("cables.separation").finding())
                .isEqualTo("Power wire w1 runs within 100 mm along wire w2 over 1.8 m, where 1.5 m are allowed.");
        assertThat(post.limit("cables.separation", 90).row("cables.separation").finding())
                .isEqualTo("No signal cable runs along a power cable within 90 mm.");
    }

    @Test
    void aCornerWithoutRoomForTheBendIsBroken() {
        // 50 mm from the wall to the tray: half of it, 25 mm, is left for each of the two bends; 35.2 mm are needed.
        Row row = routed().row("cables.bend");

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding())
                .isEqualTo(
                        "Wire w1 to Rack 2, power must not be bent tighter than 35.2 mm; its tightest corner has room for"
                                + " 25 mm.");
    }

    @Test
    void voltageDropIsThatOfTheWarmLoop() {
        // 240 W at 24 V: 10 A; 2 x 4.41 m x 10 A x 13.3 mΩ/m x 1.2 = 1.408 V, 5.87 %.
        Row row = routed().row("cables.drop");

        assertThat(row.demand()).isCloseTo(2 * 4.41 * 10 * 0.0133 * 1.2 / 24, within(1e-12));
        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding())
                .isEqualTo("Wire w1 to Rack 2, power loses 1.41 V of 24 V (5.9 % of at most 3 %) at 10 A over 4.41 m.");
    }

    @Test
    void aDutyOfTheBriefOverridesWhatTheUnitDraws() {
        CablePost post = new CablePost()
                .wire(new Wire(
                        "w1",
                        "rack-1/power",
                        "rack-2/power",
                        "supply-3x1.5",
                        null,
                        null,
                        new Duty(48.0, null, 30.0, 0.10, null, null),
                        null,
                        null,
                        null));
        post.byTray("w1", "supply-3x1.5", "power tray", 300, 1800);

        assertThat(post.row("cables.drop").demand()).isCloseTo(2 * 4.41 * 30 * 0.0133 * 1.2 / 48, within(1e-12));
        assertThat(post.row("cables.drop").capacity()).isEqualTo(0.10);
        assertThat(post.row("cables.current").finding())
                .isEqualTo("Wire w1 to Rack 2, power carries 30 A of 19.5 A that its cable bears: 10.5 A too much.");
    }

    @Test
    void aLineLosesByItsFrequencyAndLength() {
        CablePost post = new CablePost()
                .wire(new Wire(
                        "w1",
                        "rack-1/aerial",
                        "rack-2/aerial",
                        "rf-50-5",
                        null,
                        null,
                        new Duty(null, null, null, null, 150.0, 1.0),
                        null,
                        null,
                        null));
        post.byTray("w1", "rf-50-5", "signal tray", 400, 1900);

        Row row = post.row("cables.loss");

        // RG-58C/U: 20.0 dB/100 m at 150 MHz (seen); (2 x 1.05 + 2 + 0.3) x 1.05 = 4.62 m.
        assertThat(row.demand()).isCloseTo(0.0462 * 20.0, within(0.002));
        assertThat(row.finding())
                .isEqualTo("Wire w1 to Rack 2, aerial loses 0.92 dB of at most 1 dB at 150 MHz over 4.62 m.");
    }

    @Test
    void aLineOutsideTheRangeOfItsFiguresIsNotAssessed() {
        CablePost post = new CablePost()
                .wire(new Wire(
                        "w1",
                        "rack-1/aerial",
                        "rack-2/aerial",
                        "rf-50-5",
                        null,
                        null,
                        new Duty(null, null, null, null, 2400.0, 1.0),
                        null,
                        null,
                        null));
        post.byTray("w1", "rf-50-5", "signal tray", 400, 1900);

        assertThat(post.row("cables.loss").finding())
                .isEqualTo(
                        "The attenuation of the cable of wire w1 at 2400 MHz is not known. Give it in its catalog entry, or"
                                + " choose a cable of which it is known.");
    }

    @Test
    void aCableThatDoesNotFitAConnectorIsBroken() {
        assertThat(new CablePost()
                        .power("w1", "battery-2x50", null)
                        .row("cables.connectors")
                        .verdict())
                .isEqualTo(Verdict.MET);
        assertThat(new CablePost()
                        .power("w1", "data-4x2", null)
                        .rows("cables.connectors")
                        .get(0)
                        .finding())
                .isEqualTo("Rack 1, power takes power cables, but wire w1 is of Data cable 4 x 2, a signal cable.");
        assertThat(new CablePost()
                        .wire(new Wire("w1", "rack-1/network", "rack-2/network", "control-4x0.5", null))
                        .rows("cables.connectors")
                        .get(0)
                        .finding())
                .isEqualTo(
                        "Rack 1, network has the connector 8P8C, which cannot be fitted to Control cable 4 x 0.5 of wire"
                                + " w1.");
        assertThat(new CablePost()
                        .power("w1", "supply-9x9", null)
                        .row("cables.connectors")
                        .finding())
                .isEqualTo(
                        "The cable \"supply-9x9\" of wire w1 is not in the catalog. Name one of: shelterwright catalog"
                                + " list --kind cable.");
    }

    @Test
    void aPanelTakesNoMoreCablesThanItHasPlaces() {
        CablePost post = new CablePost();
        for (String id : List.of("w1", "w2")) {
            post.wire(new Wire(id, "rack-2/power", "body/panel", "supply-3x1.5", null));
            post.route(id, "supply-3x1.5", Run.free(List.of(at(3300, 0, 900), at(3300, 0, 1200), at(3500, 0, 1200))));
        }

        assertThat(post.row("cables.panel").verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(post.row("cables.panel").finding()).isEqualTo("The panel has 1 place for 2 cables.");
    }

    @Test
    void cablesStandInTheMassStatementWithTheirCentre() {
        Scene scene = Checker.standard().scene(routed().layout());

        MassLine line = MassStatement.of(scene).lines().stream()
                .filter(one -> one.group().equals("cables"))
                .findFirst()
                .orElseThrow();

        assertThat(line.unitMassKg()).isCloseTo(0.12 * 4.41, within(1e-9));
        assertThat(line.source()).isEqualTo('C');
        assertThat(line.arm()).isNotNull();
        assertThat(line.arm().x()).isEqualTo(2_300_000);
        assertThat(line.label()).isEqualTo("1 wire");
    }

    @Test
    void theLiveLedgerFollowsAMoveAsAFullOneDoes() {
        Checker checker = Checker.standard();
        Layout layout = routed().layout();
        LedgerBuilder live = new LedgerBuilder(checker.book());
        Scene scene = checker.scene(layout);
        live.update(scene);
        for (int x : new int[] {1100, 900, 1000, 1300}) {
            scene = scene.with(layout.placements()
                    .get("rack-1")
                    .withStation(Place.onFloor(new Pose(at(x, 0, 0), QuarterTurn.R90))));

            Ledger followed = live.update(scene);

            assertThat(followed.rows()).isEqualTo(checker.check(scene.layout()).rows());
        }
        assertThat(CableNet.of(scene).of("rack-1")).hasSize(1);
    }
}
