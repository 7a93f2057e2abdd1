package org.shelterwright.layouts.ledger.cables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.shelterwright.layouts.ledger.cables.CablePost.at;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.Duty;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Run;
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
    void withoutTheSizeOfAPlugItsRoomIsNotAssessed() {
        CablePost post = new CablePost()
                .power("w1", "supply-3x1.5", null)
                .backToTheSecond(10)
                .withoutRules();

        Row row = post.row("cables.plug-free");

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding())
                .isEqualTo("No value is set for \"How far a plug and the bend behind it reach out of a port\""
                        + " (cables.plug-depth).");
        assertThat(row.mend())
                .isEqualTo("Choose a rule set that sets cables.plug-depth, or set it in the limits of the brief.");
        assertThat(post.limit("cables.plug-depth", 25).row("cables.plug-free").finding())
                .isEqualTo("No value is set for \"Width of the room of a plug, across\" (cables.plug-width).");
        assertThat(post.limit("cables.plug-width", 30).row("cables.plug-free").verdict())
                .isEqualTo(Verdict.BROKEN);
        assertThat(new CablePost().withoutRules().row("cables.plug-free").verdict())
                .as("without wires there is nothing to ask for")
                .isEqualTo(Verdict.MET);
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

    /** Along the wall in two bends: the straight before each corner is all that the bend has, 35.2 mm for four times 8.8 mm. */
    @Test
    void aCornerWithJustItsBendIsCloseAndOneMicrometreLessIsBroken() {
        assertThat(cornered(35_200).row("cables.bend").verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(cornered(35_199).row("cables.bend").verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(cornered(100_000).row("cables.bend").verdict()).isEqualTo(Verdict.MET);
    }

    private static CablePost cornered(int up) {
        Point a = at(1300, 0, 900);
        Point b = at(3300, 0, 900);
        return new CablePost()
                .power("w1", "supply-3x1.5", null)
                .route(
                        "w1",
                        "supply-3x1.5",
                        Run.free(List.of(a, a.plus(new Point(0, 0, up)), b.plus(new Point(0, 0, up)), b)));
    }

    @Test
    void aStraightCableHasNoCorner() {
        CablePost post = new CablePost()
                .power("w1", "supply-3x1.5", null)
                .route("w1", "supply-3x1.5", Run.free(List.of(at(1300, 0, 900), at(3300, 0, 900))));

        assertThat(post.row("cables.bend").doesNotApply()).isTrue();
        assertThat(post.row("cables.bend").finding()).isEqualTo("No cable has a corner.");
        assertThat(post.row("cables.fill").finding()).isEqualTo("No cable lies in a tray.");
        assertThat(post.row("cables.class").verdict()).isEqualTo(Verdict.MET);
        assertThat(post.row("cables.length").finding()).isEqualTo("No wire has a greatest length.");
        assertThat(post.row("cables.loss").finding()).isEqualTo("No wire has a frequency and a greatest loss.");
    }

    /** A channel of balanced cable has 90 m of fixed cable (100 m channel, as quoted from building cabling). */
    @Test
    void theShorterOfKindAndBriefBindsTheLength() {
        Row ofKind = data(null).row("cables.length");
        Row ofBrief = data(5_000_000).row("cables.length");
        Row beyond = data(95_000_000).row("cables.length");

        assertThat(ofKind.capacity()).isEqualTo(90.0);
        assertThat(ofKind.source().clause()).isEqualTo("100 m channel, 90 m of it fixed");
        assertThat(ofBrief.capacity()).isEqualTo(5.0);
        assertThat(ofBrief.source().document()).isEqualTo("Brief");
        assertThat(beyond.capacity()).isEqualTo(90.0);
        assertThat(data(90_000_000).row("cables.length").source().document())
                .as("as long as the kind allows")
                .isEqualTo("Brief");
    }

    private static CablePost data(@Nullable Integer longest) {
        return new CablePost()
                .wire(new Wire("w2", "rack-1/network", "rack-2/network", "data-4x2", longest))
                .byTray("w2", "data-4x2", "signal tray", 500, 1900);
    }

    @Test
    void powerAlongSignalForJustTheAllowedLengthIsClose() {
        CablePost post = routed();
        post.wire(new Wire("w2", "rack-1/network", "rack-2/network", "data-4x2", null));
        post.byTray("w2", "data-4x2", "signal tray", 500, 1900);

        Row row = post.limit("cables.parallel", 1800).row("cables.separation");

        assertThat(row.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(row.units()).containsExactly("rack-1", "rack-2");
    }

    @Test
    void figuresThatAreNotSetAreNamed() {
        CablePost post = routed().withoutRules();

        for (String limit : List.of("cables.separation", "cables.fill", "cables.drop")) {
            assertThat(post.row(limit).verdict()).as(limit).isEqualTo(Verdict.NOT_ASSESSED);
            assertThat(post.row(limit).finding()).as(limit).startsWith("No value is set for ");
        }
        assertThat(post.row("cables.fill").finding()).contains("(cables.tray-fill)");
        assertThat(post.row("cables.separation").finding()).contains("(cables.separation)");
        assertThat(post.limit("cables.separation", 100).row("cables.separation").finding())
                .contains("(cables.parallel)");
        assertThat(post.row("cables.drop").finding()).contains("(cables.voltage-drop)");
        assertThat(post.limit("cables.voltage-drop", 0.05).row("cables.drop").finding())
                .contains("(cables.conductor-temperature)");
    }

    @Test
    void aTrayOfExactlyItsFillIsClose() {
        CablePost post = new CablePost().power("w1", "battery-2x50", null);
        post.byTray("w1", "battery-2x50", "power tray", 300, 1800);
        double share = Math.PI / 4 * 27 * 27 / 1000;

        assertThat(post.limit("cables.tray-fill", share + 1e-12)
                        .row("cables.fill")
                        .verdict())
                .isEqualTo(Verdict.CLOSE);
        assertThat(post.row("cables.fill").finding()).endsWith(": 0 mm² are left.");
        assertThat(post.limit("cables.tray-fill", share - 1e-9)
                        .row("cables.fill")
                        .verdict())
                .isEqualTo(Verdict.BROKEN);
        assertThat(post.row("cables.fill").units()).containsExactly("rack-1", "rack-2");
    }

    @Test
    void ofManyCablesInATrayEightAreNamed() {
        assertThat(many(8).row("cables.fill").finding()).contains(", by 8 cables (w1, w2, w3, w4, w5, w6, w7, w8): ");
        assertThat(many(9).row("cables.fill").finding())
                .contains(", by 9 cables (w1, w2, w3, w4, w5, w6, w7, w8, ...): ");
    }

    private static CablePost many(int count) {
        CablePost post = new CablePost();
        for (int i = 1; i <= count; i++) {
            post.power("w" + i, "supply-3x1.5", null);
            post.byTray("w" + i, "supply-3x1.5", "power tray", 300, 1800);
        }
        return post;
    }

    @Test
    void aCableAmongOthersBearsLess() {
        CablePost post = many(2).limit("cables.grouping", 0.5);

        List<Row> rows = post.rows("cables.current");

        assertThat(rows).hasSize(2).extracting(Row::verdict).containsOnly(Verdict.BROKEN);
        assertThat(rows.get(0).finding())
                .isEqualTo("Wire w1 to Rack 2, power carries 10 A of 9.8 A that its cable bears among others: 0.3 A too"
                        + " much.");
        assertThat(many(2).withoutRules().row("cables.current").finding()).contains("(cables.grouping)");
    }

    @Test
    void aCableThatCarriesAllItBearsIsClose() {
        assertThat(duty(19.5, null).row("cables.current").verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(duty(19.5, null).row("cables.current").finding())
                .isEqualTo("Wire w1 to Rack 2, power carries 19.5 A of 19.5 A that its cable bears: 0 A are left.");
        assertThat(duty(19.6, null).row("cables.current").verdict()).isEqualTo(Verdict.BROKEN);
    }

    /** 2 · 4.41 m · 10 A · 13.3 mΩ/m · 1.2 of 24 V (by hand) as the greatest drop, and a millionth less. */
    @Test
    void aDropOfJustWhatIsAllowedIsClose() {
        double share = 2 * 4.41 * 10 * 0.0133 * 1.2 / 24;

        assertThat(duty(10.0, share + 1e-9).row("cables.drop").verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(duty(10.0, share - 1e-6).row("cables.drop").verdict()).isEqualTo(Verdict.BROKEN);
    }

    private static CablePost duty(double currentA, @Nullable Double dropShare) {
        return new CablePost()
                .wire(new Wire(
                        "w1",
                        "rack-1/power",
                        "rack-2/power",
                        "supply-3x1.5",
                        null,
                        null,
                        new Duty(24.0, null, currentA, dropShare, null, null),
                        null,
                        null,
                        null))
                .byTray("w1", "supply-3x1.5", "power tray", 300, 1800);
    }

    @Test
    void aSignalCableCarriesNoPower() {
        assertThat(data(null).row("cables.current").finding()).isEqualTo("No wire carries power.");
        assertThat(data(null).row("cables.drop").finding()).isEqualTo("No wire carries power.");
        assertThat(data(null).row("cables.current").doesNotApply()).isTrue();
    }

    private static CablePost aerials(int count, @Nullable Duty duty) {
        CablePost post = new CablePost();
        for (int i = 1; i <= count; i++) {
            String id = "w" + i;
            post.wire(new Wire(id, "rack-1/aerial", "rack-2/aerial", "rf-50-5", null, null, duty, null, null, null));
            post.byTray(id, "rf-50-5", "signal tray", 400, 1900);
        }
        return post;
    }

    @Test
    void aLineWithoutFrequencyOrLossIsNotAssessed() {
        Row one = aerials(1, null).row("cables.loss");
        Row two = aerials(2, new Duty(null, null, null, null, 150.0, null)).row("cables.loss");

        assertThat(one.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(one.units()).containsExactly("rack-1", "rack-2");
        assertThat(one.finding())
                .isEqualTo(
                        "The frequency and the greatest loss of wire w1 are not known. Give frequencyMHz and lossDb in"
                                + " its duty.");
        assertThat(two.finding()).endsWith(" in its duty. (and 1 wire more)");
    }

    /** 20.0 dB/100 m at 150 MHz, as printed for RG-58C/U (seen), on 4.62 m: 0.924 dB. */
    @Test
    void aLineOfJustItsGreatestLossIsClose() {
        double loss = Objects.requireNonNull(aerials(1, new Duty(null, null, null, null, 150.0, 1.0))
                .row("cables.loss")
                .demand());

        assertThat(loss).isCloseTo(0.924, within(0.002));
        assertThat(aerials(1, new Duty(null, null, null, null, 150.0, loss))
                        .row("cables.loss")
                        .verdict())
                .isEqualTo(Verdict.CLOSE);
        assertThat(aerials(1, new Duty(null, null, null, null, 150.0, loss - 1e-6))
                        .row("cables.loss")
                        .verdict())
                .isEqualTo(Verdict.BROKEN);
    }

    /** The least way out across a run: of a cuboid 40 mm wide and 30 mm high, of a run 10 mm from its side and 12 mm from its top. */
    @Test
    void depthIsTheLeastWayOutAcrossTheRun() {
        Box solid = Box.ofMm(20, 0, 0, 50, 40, 30);

        assertThat(RunsClear.depth(at(0, 10, 18), at(100, 10, 18), solid)).isEqualTo(10_000);
        assertThat(RunsClear.depth(at(100, 10, 18), at(0, 10, 18), solid)).isEqualTo(10_000);
        assertThat(RunsClear.depth(at(0, 35, 18), at(100, 35, 18), solid)).isEqualTo(5_000);
        assertThat(RunsClear.depth(at(0, 20, 27), at(100, 20, 27), solid)).isEqualTo(3_000);
        assertThat(RunsClear.depth(at(0, 40, 18), at(100, 40, 18), solid))
                .as("on its face")
                .isZero();
        assertThat(RunsClear.depth(at(0, 50, 18), at(100, 50, 18), solid))
                .as("beside it")
                .isZero();
        assertThat(RunsClear.depth(at(0, 10, 18), at(20, 10, 18), solid))
                .as("up to it")
                .isZero();
        assertThat(RunsClear.depth(at(50, 10, 18), at(90, 10, 18), solid))
                .as("from it")
                .isZero();
        assertThat(RunsClear.depth(at(0, 10, 18), at(21, 10, 18), solid)).isEqualTo(10_000);
        assertThat(RunsClear.depth(at(30, 10, 0), at(30, 10, 10), solid))
                .as("up into it")
                .isEqualTo(10_000);
        assertThat(CableLimits.passes(at(0, 10, 18), at(100, 10, 18), solid)).isTrue();
        assertThat(CableLimits.passes(at(0, 40, 18), at(100, 40, 18), solid)).isFalse();
    }

    @Test
    void aCableThatLeavesTheBodyIsBroken() {
        CablePost post = new CablePost().power("w1", "supply-3x1.5", null);
        post.route(
                "w1",
                "supply-3x1.5",
                Run.free(List.of(at(1300, 0, 900), at(1300, 0, 2001), at(3300, 0, 2001), at(3300, 0, 900))));

        assertThat(post.row("cables.clear").verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(post.row("cables.clear").finding())
                .isEqualTo("Wire w1 to Rack 2, power leaves the inside of the body other than by an entry panel.");
        assertThat(post.row("cables.clear").mend()).isEqualTo("Route it again, or move what stands in its way.");
    }

    @Test
    void aWireWhoseCableIsNotChosenYetIsNotAssessed() {
        CablePost post = new CablePost()
                .wire(new Wire("w1", "rack-1/power", "rack-2/power", null, null, "supply-3", null, null, null, null));

        assertThat(post.row("cables.connectors").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(post.row("cables.connectors").finding())
                .isEqualTo("The cable of wire w1 is not chosen yet. Route the wires.");
    }

    @Test
    void bothEndsOfACableMustFit() {
        CablePost post = new CablePost().wire(new Wire("w1", "rack-1/network", "rack-2/power", "data-4x2", null));

        assertThat(post.rows("cables.connectors"))
                .extracting(Row::finding)
                .containsExactly(
                        "Rack 2, power takes power cables, but wire w1 is of Data cable 4 x 2, a signal cable.");
    }

    @Test
    void aPanelWithJustEnoughPlacesHoldsAndUnusedOnesDoNotApply() {
        CablePost post = new CablePost();
        post.wire(new Wire("w1", "rack-2/power", "body/panel", "supply-3x1.5", null));
        post.route("w1", "supply-3x1.5", Run.free(List.of(at(3300, 0, 900), at(3300, 0, 1200), at(3500, 0, 1200))));

        assertThat(post.row("cables.panel").verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(post.row("cables.panel").finding()).isEqualTo("The panel has 1 place for 1 cable.");
        assertThat(routed().row("cables.panel").doesNotApply()).isTrue();
        assertThat(routed().row("cables.panel").finding()).isEqualTo("No wire goes through an entry panel.");
    }

    @Test
    void ofSomeWiresWithoutARouteEachIsNamed() {
        CablePost post = routed();
        post.wire(new Wire("w2", "rack-1/network", "rack-2/network", "data-4x2", null));

        List<Row> rows = post.rows("cables.routed");

        assertThat(rows).singleElement().satisfies(row -> {
            assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
            assertThat(row.title()).isEqualTo("Routes of wires, w2");
            assertThat(row.mend()).isEqualTo("Route the wires: shelterwright route FILE.");
        });
        assertThat(new CablePost()
                        .power("w1", "supply-3x1.5", null)
                        .row("cables.panel")
                        .doesNotApply())
                .isTrue();
    }

    @Test
    void ofTheWiresThatHoldTheTightestIsTold() {
        CablePost post = new CablePost();
        post.power("w1", "supply-3x1.5", 20_000_000).byTray("w1", "supply-3x1.5", "power tray", 300, 1800);
        post.power("w2", "supply-3x1.5", 10_000_000).byTray("w2", "supply-3x1.5", "power tray", 300, 1800);
        post.power("w3", "supply-3x1.5", 4_000_000).byTray("w3", "supply-3x1.5", "power tray", 300, 1800);

        assertThat(post.rows("cables.length"))
                .extracting(Row::title)
                .containsExactly("Length of wire, w3", "Length of wire, w2");
    }
}
