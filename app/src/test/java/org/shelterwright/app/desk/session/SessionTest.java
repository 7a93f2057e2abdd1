package org.shelterwright.app.desk.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.desk.WorkAtOnce;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.edit.Edit;
import org.shelterwright.layouts.edit.PutUnit;
import org.shelterwright.layouts.edit.RemoveUnit;
import org.shelterwright.layouts.edit.TakeOutUnit;
import org.shelterwright.layouts.edit.TurnUnit;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.samples.Samples;

class SessionTest {
    private final Checker checker = Checker.standard();
    private final Layout start =
            LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();
    private final Session session = new Session(checker, start);

    @Test
    void the_live_ledger_equals_a_full_check_after_every_one_of_many_edits() {
        Random random = new Random(7);
        for (int i = 0; i < 60; i++) {
            List<Placement> placed =
                    List.copyOf(session.now().layout().placements().values());
            Placement one = placed.get(random.nextInt(placed.size()));
            Pose pose = one.station().pose();
            Point at =
                    pose.at().plus(new Point(random.nextInt(200_001) - 100_000, random.nextInt(200_001) - 100_000, 0));
            Edit edit = switch (random.nextInt(8)) {
                case 0 -> new TurnUnit(one.unit(), QuarterTurn.R90);
                case 1 -> placed.size() > 20 ? new TakeOutUnit(one.unit()) : new TurnUnit(one.unit(), QuarterTurn.R180);
                default -> new PutUnit(one.unit(), one.station().with(new Pose(at, pose.yaw())));
            };
            if (random.nextInt(3) == 0) {
                session.tryOut(edit);
            } else {
                session.apply(edit);
            }

            Ledger full = checker.check(session.now().layout());
            boolean moving = session.now().tryingOut();
            assertThat(
                            moving
                                    ? following(session.now().ledger())
                                    : session.now().ledger().rows())
                    .as("edit %d of seed 7: %s", i, edit)
                    .isEqualTo(moving ? following(full) : full.rows());
        }
    }

    /** The rows of limits that follow a drag. */
    private List<Row> following(Ledger ledger) {
        return ledger.rows().stream()
                .filter(row -> !(checker.book().limit(row.limit()).orElseThrow() instanceof Limit.AtRest))
                .toList();
    }

    @Test
    void what_is_tried_out_is_shown_but_no_step_until_it_is_kept() {
        Edit edit = moved("rack-1", 10_000);

        session.tryOut(edit);
        assertThat(session.now().tryingOut()).isTrue();
        assertThat(session.now().history().canUndo()).isFalse();
        assertThat(session.now().layout()).isEqualTo(edit.apply(start));

        session.keep("Drag rack-1");
        assertThat(session.now().tryingOut()).isFalse();
        assertThat(session.now().history().undoNames()).containsExactly("Drag rack-1");

        session.undo();
        assertThat(session.now().layout()).isEqualTo(start);
    }

    @Test
    void giving_up_shows_the_layout_of_the_history_again() {
        session.tryOut(moved("rack-1", 10_000));

        session.giveUp();

        assertThat(session.now().layout()).isEqualTo(start);
        assertThat(session.now().ledger()).isEqualTo(checker.check(start));
    }

    @Test
    void a_unit_that_leaves_the_brief_leaves_the_selection() {
        session.selection().set(List.of("rack-1", "rack-2"));

        session.apply(new RemoveUnit("rack-1"));

        assertThat(session.selection().units().get()).containsExactly("rack-2");
        assertThat(session.selection().leader()).contains("rack-2");
    }

    private Edit moved(String unit, int dx) {
        Place place = start.placements().get(unit).station();
        assertThat(place.surface()).isEqualTo(Surface.FLOOR);
        return new PutUnit(
                unit,
                place.with(new Pose(
                        place.pose().at().plus(new Point(dx, 0, 0)),
                        place.pose().yaw())));
    }

    @Test
    void limits_at_rest_answered_elsewhere_come_later_and_are_not_assessed_until_then() {
        WorkAtOnce work = new WorkAtOnce();
        Session elsewhere = Session.answeredElsewhere(checker, start);
        assertThat(elsewhere.now().settled()).isFalse();
        assertThat(elsewhere.now().ledger().of("boltdown.order"))
                .allMatch(row -> row.verdict() == Verdict.NOT_ASSESSED);

        elsewhere.answerBy(work);

        assertThat(elsewhere.now().settled()).isTrue();
        assertThat(elsewhere.now().ledger()).isEqualTo(checker.check(start));
    }

    @Test
    void an_answer_that_a_newer_change_has_outdated_is_not_taken() {
        WorkAtOnce work = new WorkAtOnce();
        Session elsewhere = Session.answeredElsewhere(checker, start);
        elsewhere.answerBy(work);
        work.hold();

        elsewhere.apply(moved("rack-1", 10_000));
        elsewhere.apply(moved("rack-2", 10_000));
        elsewhere.tryOut(moved("rack-1", 30_000));
        assertThat(elsewhere.now().settled()).isFalse();
        work.letGo();
        assertThat(elsewhere.now().settled()).as("while something is tried out").isFalse();
        elsewhere.giveUp();

        assertThat(elsewhere.now().settled()).as("the last answer is known").isTrue();
        assertThat(elsewhere.now().ledger())
                .isEqualTo(checker.check(elsewhere.now().layout()));
    }
}
