package org.shelterwright.app.desk.hand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.edit.ChangeItem;
import org.shelterwright.layouts.edit.StowUnit;
import org.shelterwright.layouts.edit.TakeOutUnit;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;

class CarryTest {
    private final Layout start = HandPost.layout();
    private final Session session = new Session(Checker.standard(), start);

    @Test
    void aUnitIsShownWhereItCanBeMountedNearestToWhatIsPointedAt() {
        session.apply(new TakeOutUnit("rack-1"));
        Carry carry = Carry.take(session, "rack-1");

        carry.to(Point.ofMm(1350, 450, 0));

        Box outline = outline("rack-1");
        assertThat(outline.z0()).isZero();
        assertThat(Math.abs(outline.centre().x() - 1_350_000)).isLessThan(150_000);
        assertThat(Math.abs(outline.centre().y() - 450_000)).isLessThan(150_000);
        assertThat(rows("fit.fixings", "rack-1"))
                .allSatisfy(row -> assertThat(row.excess()).isZero());
        assertThat(session.now().tryingOut()).isTrue();
    }

    @Test
    void wherePointedAtAWallItHangsThereAndOverAUnitItStandsOnIt() {
        session.apply(new TakeOutUnit("heater"));
        Carry heater = Carry.take(session, "heater");
        heater.to(Point.ofMm(2000, 2300, 200));
        assertThat(outline("heater").y1()).isEqualTo(2_300_000);
        heater.cancel();
        session.apply(new TakeOutUnit("screen-1"));

        Carry screen = Carry.take(session, "screen-1");
        screen.to(Point.ofMm(3800, 1900, 740));

        assertThat(session.now().layout().placements().get("screen-1").station().surface())
                .isEqualTo(Surface.ON_UNIT);
        assertThat(session.now().layout().placements().get("screen-1").station().host())
                .isEqualTo("desk");
    }

    @Test
    void lettingGoIsOneStepAndPuttingBackNone() {
        session.apply(new TakeOutUnit("rack-1"));
        Layout without = session.now().layout();
        Carry carry = Carry.take(session, "rack-1");
        carry.to(Point.ofMm(1350, 450, 0));
        carry.cancel();
        assertThat(session.now().layout()).isEqualTo(without);

        carry = Carry.take(session, "rack-1");
        carry.to(Point.ofMm(1350, 450, 0));
        carry.to(Point.ofMm(1200, 450, 0));
        carry.drop();

        assertThat(session.now().history().undoNames()).hasSize(2).first().isEqualTo("Place Telemetry rack 1");
    }

    @Test
    void whatCanBeMountedNowhereIsRefused() {
        Item rack = start.parts().item("rack-19-34u");
        Size huge = Size.ofMm(9000, 9000, 9000);
        session.apply(new ChangeItem(
                Item.named(rack.id(), rack.name(), rack.kind(), rack.material(), huge, rack.mounting(), rack.mass())
                        .fixings(rack.fixings())
                        .turns(rack.turns())
                        .ports(rack.ports())
                        .build()));

        assertThatThrownBy(() -> Carry.take(session, "rack-1"))
                .hasMessage(
                        "Telemetry rack 1 has no place in this body: it is too large, or its fixings land nowhere.");
        assertThatThrownBy(() -> Carry.take(session, "nobody")).hasMessage("The brief has no unit \"nobody\".");
    }

    @Test
    void whatBreaksThereIsToldWithWhatWouldMendIt() {
        Ledger before = session.now().ledger();
        Carry carry = Carry.take(session, "rack-1");
        carry.to(Point.ofMm(2350, 1250, 0));

        Breakage breakage = Breakage.of(before, session.now().ledger(), Set.of("rack-1"));

        assertThat(breakage.rows()).isNotEmpty().anySatisfy(row -> {
            assertThat(row.units()).contains("rack-1");
            assertThat(row.mend()).isNotBlank();
        });
        assertThat(Breakage.of(session.now().ledger(), session.now().ledger(), Set.of("heater"))
                        .rows())
                .as("what was broken before and concerns others is not told")
                .allSatisfy(row -> assertThat(row.units()).contains("heater"));
        assertThat(breakage.words())
                .isEqualTo(
                        breakage.rows().size() == 1
                                ? "One limit breaks here."
                                : breakage.rows().size() + " limits break here.");
        assertThat(new Breakage(List.of()).words()).isEqualTo("Nothing breaks here.");
    }

    @Test
    void onAnotherUnitItStaysWithinTheBody() {
        Carry screen = Carry.take(session, "screen-1");
        Box inside = session.now().scene().body().inside().box();
        Box host = outline("chart-table");

        for (Point corner : List.of(
                new Point(host.x0(), host.y0(), host.z1()),
                new Point(host.x0(), host.y1(), host.z1()),
                new Point(host.x1(), host.y0(), host.z1()),
                new Point(host.x1(), host.y1(), host.z1()))) {
            screen.to(corner);
            assertThat(inside.contains(outline("screen-1"))).as("at " + corner).isTrue();
        }
    }

    @Test
    void whatStandsKeepsItsTurnWhereItCan() {
        QuarterTurn before = session.now()
                .scene()
                .unit("rack-1")
                .orElseThrow()
                .pose(Situation.ON_STATION)
                .yaw();
        Carry rack = Carry.take(session, "rack-1");

        for (int x = 500; x <= 3500; x += 500) {
            rack.to(Point.ofMm(x, 1150, 0));
            assertThat(session.now()
                            .scene()
                            .unit("rack-1")
                            .orElseThrow()
                            .pose(Situation.ON_STATION)
                            .yaw())
                    .as("at " + x)
                    .isEqualTo(before);
        }
        rack.drop();
        assertThat(session.now().history().undoNames()).containsExactly("Move Telemetry rack 1");
    }

    @Test
    void aPlaceThatNothingElseDecidesIsAtWholeMillimetresAndSaysOnWhatItIs() {
        Carry screen = Carry.take(session, "screen-1");
        assertThat(screen.onto()).isEmpty();

        screen.to(new Point(3_700_123, 1_899_777, 740_000));

        assertThat(screen.onto()).isEqualTo("on Desk");
        Point at = session.now()
                .layout()
                .placements()
                .get("screen-1")
                .station()
                .pose()
                .at();
        assertThat(at.x() % 1_000).isZero();
        assertThat(at.y() % 1_000).isZero();
    }

    @Test
    void anItemDrawnFromTheCatalogJoinsTheEquipmentWhenItIsLetGoOfInOneStep() {
        Item rack = start.parts().item("rack-19-34u");
        Carry carry = Carry.draw(session, rack);
        carry.to(Point.ofMm(2350, 1250, 0));
        assertThat(session.now().layout().placements()).containsKey(carry.unit());
        carry.cancel();
        assertThat(session.now().layout()).isEqualTo(start);

        carry = Carry.draw(session, rack);
        carry.to(Point.ofMm(2350, 1250, 0));
        carry.drop();

        String added = carry.unit();
        assertThat(session.now().layout().brief().units()).anySatisfy(unit -> {
            assertThat(unit.id()).isEqualTo(added);
            assertThat(unit.item()).isEqualTo("rack-19-34u");
        });
        assertThat(session.now().layout().placements()).containsKey(added);
        assertThat(session.now().history().undoNames())
                .containsExactly(
                        "Add " + session.now().scene().unit(added).orElseThrow().name());
        session.undo();
        assertThat(session.now().layout()).isEqualTo(start);
    }

    @Test
    void whatIsStowedElsewhereIsNotMountedFromThePictureOfTheRoad() {
        session.situation().set(Situation.ON_THE_ROAD);
        session.apply(new StowUnit(
                "folding-chair", start.placements().get("folding-chair").station()));

        assertThatThrownBy(() -> Carry.take(session, "folding-chair"))
                .hasMessage(
                        "Folding chair has a place of its own on the road. Show the layout on station (S) to mount it"
                                + " elsewhere there.");
    }

    @Test
    void whatMendsANarrowWayIsNotToMoveWhatItLeadsToIfSomethingElseStandsThere() {
        Carry crate = Carry.take(session, "winch-crate");
        int seen = 0;
        for (int x = 400; x <= 3800; x += 300) {
            for (int y = 700; y <= 1600; y += 300) {
                crate.to(Point.ofMm(x, y, 0));
                for (Row row : session.now().ledger().rows()) {
                    if (row.finding().contains(" narrows to ") && row.finding().contains("Winch crate")) {
                        String owner = session.now()
                                .scene()
                                .unit(row.units().get(0))
                                .orElseThrow()
                                .name();
                        if (!owner.equals("Winch crate")) {
                            assertThat(row.mend()).as(row.finding()).doesNotStartWith("Move " + owner + " ");
                            seen++;
                        }
                    }
                }
            }
        }
        assertThat(seen).as("narrow ways past the crate").isPositive();
    }

    private List<Row> rows(String limit, String unit) {
        return session.now().ledger().of(limit).stream()
                .filter(row -> row.units().contains(unit))
                .toList();
    }

    private Box outline(String unit) {
        return session.now().scene().unit(unit).orElseThrow().outline(Situation.ON_STATION);
    }
}
