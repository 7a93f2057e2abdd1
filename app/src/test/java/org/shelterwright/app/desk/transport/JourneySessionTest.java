package org.shelterwright.app.desk.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.desk.session.Finding;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.transport.edit.PutStand;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

class JourneySessionTest {
    private final JourneySession session = JourneyPost.session();
    private final StandSheet sheet = new StandSheet(session);

    private JourneyStanding now() {
        return session.now().orElseThrow();
    }

    private void select(String piece) {
        session.look(focus -> focus.onPieces(Set.of(piece)));
    }

    @Test
    void theLegWithMostCarsAndItsFirstCarAreLookedAtFirst() {
        assertThat(session.focus().get()).extracting(Focus::leg, Focus::load).containsExactly(2, "wagon-1");
        assertThat(session.leg().orElseThrow().leg().id()).isEqualTo("rail");
        assertThat(session.load().map(PlacedLoad::id)).contains("wagon-1");
    }

    @Test
    void anotherLegShowsItsOwnCarAndACarIsShownOnALegThatItGoesOn() {
        session.look(focus -> focus.onLeg(1, now().scene()));
        assertThat(session.load().map(PlacedLoad::id)).contains("lorry-1");

        session.look(focus -> focus.onLoad("wagon-2", now().scene()));
        assertThat(session.focus().get()).extracting(Focus::leg, Focus::load).containsExactly(2, "wagon-2");
    }

    @Test
    void aChangeIsTriedOutWithItsLedgerAndKeptOrGivenUp() {
        JourneyStanding before = now();
        PutStand out = new PutStand("wagon-1", "river-post", Pose.at(Point.ofMm(-2_000, 160, 0)));

        session.tryOut(out);
        assertThat(now().tryingOut()).isTrue();
        assertThat(now().ledger().all().of("transport.inside-car")).anyMatch(row -> row.verdict() == Verdict.BROKEN);
        session.giveUp();
        assertThat(now().journey()).isEqualTo(before.journey());
        assertThat(now().ledger()).isEqualTo(before.ledger());

        session.tryOut(out);
        session.keep("Move river-post");
        assertThat(now().history().undoNames()).containsExactly("Move river-post");
        assertThat(now().ledger()).isEqualTo(JourneyPost.CHECKER.check(now().scene()));
        session.undo();
        assertThat(now().ledger()).isEqualTo(before.ledger());
        session.redo();
        assertThat(now().journey()
                        .load("wagon-1")
                        .orElseThrow()
                        .stand("river-post")
                        .orElseThrow()
                        .pose()
                        .at()
                        .x())
                .isEqualTo(-2_000_000);
    }

    @Test
    void withoutAJourneyNothingCanBeChanged() {
        JourneySession none = new JourneySession(JourneyPost.CHECKER);

        assertThatThrownBy(none::undo).hasMessage("No journey is open. Open one, or the sample Road-Rail Move.");
        assertThat(none.load()).isEmpty();
        assertThat(none.legLedger()).isEmpty();
    }

    @Test
    void placesAreTypedTurnedNudgedPinnedAndTakenBack() {
        select("generator-trailer");

        assertThat(sheet.setPlace(Axis.X, "8900+25")).isEmpty();
        assertThat(sheet.place(Axis.X)).isEqualTo("8925");
        assertThat(sheet.setPlace(Axis.X, "far"))
                .contains("\"far\" is no length. Type a number or a sum, such as 25.4, 1.2 m, 3 in or 450+25.");
        assertThat(sheet.nudge(Axis.Y, -10_000)).isEmpty();
        assertThat(sheet.place(Axis.Y)).isEqualTo("460");
        assertThat(sheet.turn()).isEmpty();
        assertThat(sheet.placed().orElseThrow().pose().yaw()).isEqualTo(QuarterTurn.R90);
        assertThat(sheet.pin(true)).isEmpty();
        assertThat(sheet.pinned()).isTrue();
        assertThat(now().history().undoNames())
                .containsExactly(
                        "Pin generator-trailer",
                        "Put generator-trailer on wagon-1",
                        "Put generator-trailer on wagon-1",
                        "Put generator-trailer on wagon-1");
    }

    @Test
    void aPieceGoesToAnotherCarOntoTheFirstFreePlaceAndIsShownThere() {
        select("crate-1");

        assertThat(sheet.putOn("wagon-2")).isEmpty();

        assertThat(session.load().map(PlacedLoad::id)).contains("wagon-2");
        assertThat(sheet.placed().orElseThrow().box().x0()).isZero();
        assertThat(sheet.takeOff()).isEmpty();
        assertThat(sheet.placed()).isEmpty();
        assertThat(sheet.takeOff()).contains("It stands on no car of this leg.");
    }

    @Test
    void aRowOfALegIsAcceptedAndThatIsTakenBackEachAsOneStep() {
        JourneyJudged judged = new JourneyJudged(session, () -> null);
        session.apply(new PutStand("wagon-1", "river-post", Pose.at(Point.ofMm(-2_000, 160, 0))));
        Row row = judged.ledger().rows().get(0);
        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        Acceptance given = new Acceptance(row.limit(), row.units(), "Asked.", "P. Planner", "2026-03-01");

        judged.accept("Accept it", List.of(given));
        assertThat(judged.accepted(row)).contains(given);
        assertThat(now().journey().leg("rail").orElseThrow().acceptances()).containsExactly(given);
        assertThat(judged.ledger().rows()).as("it is shown as it is").contains(row);
        session.look(focus -> focus.onLeg(1, now().scene()));
        assertThat(judged.accepted(row)).as("on another leg").isEmpty();
        session.look(focus -> focus.onLeg(2, now().scene()));

        judged.withdraw("Accept it no more", List.of(row));
        assertThat(judged.accepted(row)).isEmpty();
        assertThat(now().history().undoNames()).startsWith("Accept it no more", "Accept it");
        session.undo();
        assertThat(judged.accepted(row)).contains(given);
    }

    @Test
    void theWorstFindingIsThatOfAllLegsWhicheverLegIsLookedAt() {
        JourneyJudged judged = new JourneyJudged(session, () -> null);
        session.apply(new PutStand("wagon-1", "river-post", Pose.at(Point.ofMm(-2_000, 160, 0))));
        Row worst = now().ledger().all().rows().get(0);
        for (int leg = 1; leg <= now().ledger().legs().size(); leg++) {
            int number = leg;
            session.look(focus -> focus.onLeg(number, now().scene()));

            assertThat(judged.obstacle()).isEmpty();
            judged.worst();

            assertThat(judged.ledger().rows()).contains(worst);
            assertThat(judged.finding()).contains(Finding.of(worst));
        }
    }

    @Test
    void goingFromFindingToFindingLeadsThroughAllLegs() {
        JourneyJudged judged = new JourneyJudged(session, () -> null);
        Set<Integer> legs = new java.util.TreeSet<>();
        Finding first = null;
        int findings = (int) now().ledger().all().rows().stream()
                .filter(row -> row.verdict() != Verdict.MET)
                .count();
        for (int i = 0; i < findings; i++) {
            judged.step(1);
            legs.add(session.focus().get().leg());
            first = first == null ? judged.finding().orElseThrow() : first;
        }
        assertThat(legs).containsExactly(1, 2, 3);
        judged.step(1);
        assertThat(judged.finding()).contains(first);
    }

    @Test
    void theLegsSayWhatGovernsThem() {
        List<LegLine> lines = LegLine.of(now());

        assertThat(lines)
                .extracting(LegLine::title)
                .containsExactly("1  Road, 68\u2009km", "2  Rail, 214\u2009km", "3  Road, 41\u2009km");
        assertThat(lines.get(1).verdict()).isEqualTo(Verdict.BROKEN);
        Row row = now().ledger().legs().get(1).ledger().rows().get(0);
        assertThat(lines.get(1).governing()).isEqualTo(row.title());
        assertThat(lines.get(1).count()).endsWith(" broken");
    }

    @Test
    void whatGoesIsListedCarByCarThenWhatHasNoPlace() {
        List<GoesLine> lines = GoesLine.of(session.leg().orElseThrow());

        assertThat(lines.get(0))
                .isInstanceOfSatisfying(
                        GoesLine.Car.class, car -> assertThat(car.figure()).isEqualTo("10.3 of 55.5\u2009t"));
        assertThat(lines).contains(new GoesLine.Heading("On no car yet"));
        assertThat(lines)
                .last()
                .isInstanceOfSatisfying(
                        GoesLine.One.class, one -> assertThat(one.load()).isNull());
        List<GoesLine> road = GoesLine.of(now().scene().legs().get(0));
        assertThat(road).contains(new GoesLine.Heading("On their own wheels"));
    }

    @Test
    void theBarsAreThoseOfTheLedger() {
        List<Bar> bars =
                Bar.of(session.load().orElseThrow(), session.legLedger().orElseThrow(), 0.9);

        assertThat(bars).extracting(Bar::title).startsWith("bogie 1, each axle", "bogie 2, each axle");
        Row axle = session.legLedger().orElseThrow().of("transport.axle").stream()
                .filter(row -> row.units().contains("wagon-1"))
                .findFirst()
                .orElseThrow();
        assertThat(Math.max(bars.get(0).use(), bars.get(1).use())).isEqualTo(axle.use());
        Row load = session.legLedger().orElseThrow().of("transport.load").stream()
                .filter(row -> row.units().contains("wagon-1"))
                .findFirst()
                .orElseThrow();
        assertThat(bars)
                .anyMatch(bar -> bar.title().equals("Load") && load.use().equals(bar.use()));
    }
}
