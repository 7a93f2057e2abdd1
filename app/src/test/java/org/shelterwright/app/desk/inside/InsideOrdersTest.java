package org.shelterwright.app.desk.inside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.edit.TakeOutUnit;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.inside.Held;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.samples.Samples;

/** Orders inside units: each is one step, the ledger follows, and what cannot be is refused with a sentence. */
class InsideOrdersTest {
    private final Checker checker = Checker.standard();
    private final Session session = new Session(
            checker,
            LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout());
    private final InsideDesk desk = new InsideDesk(session);
    private final InsideOrders orders = new InsideOrders(desk);

    @Test
    void the_ledger_equals_a_full_check_after_every_one_of_many_orders() {
        Random random = new Random(5);
        List<String> units = List.of("rack-1", "rack-2", "gauge-locker");
        for (int i = 0; i < 40; i++) {
            session.selection().only(units.get(random.nextInt(units.size())));
            assertThat(desk.obstacle()).isEmpty();
            desk.openSelected();
            List<Held> held = desk.held();
            if (held.isEmpty()) {
                continue;
            }
            desk.chosen().set(held.get(random.nextInt(held.size())).id());
            switch (random.nextInt(5)) {
                case 0 -> orders.keepOrLetGo();
                case 1 -> orders.turn();
                case 2 -> orders.shift(new Point(0, 5_000 * (random.nextInt(7) - 3), 0));
                case 3 -> orders.toUnit(1 + random.nextInt(30));
                default -> {
                    String piece = orders.chosen().orElseThrow().id();
                    orders.takeOut();
                    orders.putIn(piece);
                }
            }
            assertThat(session.now().ledger())
                    .as("order %d of seed 5", i)
                    .isEqualTo(checker.check(session.now().layout()));
        }
    }

    @Test
    void a_piece_stays_within_its_bay() {
        Held piece = opened("rack-1").get(0);
        desk.chosen().set(piece.id());

        orders.toUnit(500);

        InRack moved = (InRack) orders.chosen().orElseThrow();
        assertThat(moved.highest()).isEqualTo(moved.bay().units());
        assertThat(session.now().history().undoNames())
                .containsExactly("Move " + moved.name() + " to U" + moved.lowest());
    }

    @Test
    void what_is_loose_is_not_put_into_a_rack() {
        opened("rack-1");
        String loose = session.now().layout().brief().listed().pieces().stream()
                .filter(spec -> session.now().layout().contents().kind(spec).loose() != null)
                .findFirst()
                .orElseThrow()
                .id();

        Optional<String> refusal = orders.putIn(loose);

        assertThat(refusal).contains(desk.name(loose) + " is loose. Open a stowage place for it.");
    }

    @Test
    void what_is_rack_mounted_is_not_put_into_a_stowage_place() {
        String racked = opened("rack-1").get(0).id();
        opened("gauge-locker");

        assertThat(orders.putIn(racked)).contains(desk.name(racked) + " is rack-mounted. Open a rack for it.");
    }

    @Test
    void what_is_taken_out_finds_its_own_units_again() {
        Held piece = opened("rack-1").get(0);
        desk.chosen().set(piece.id());
        orders.takeOut();
        assertThat(desk.toPlace()).hasSize(1);

        Optional<String> refusal = orders.putIn(piece.id());

        assertThat(refusal).isEmpty();
        assertThat(desk.toPlace()).isEmpty();
    }

    @Test
    void a_unit_without_an_inside_says_so() {
        session.selection().only("heater");

        assertThat(desk.obstacle())
                .hasValueSatisfying(text -> assertThat(text).endsWith("has no bay and no stowage place."));
    }

    @Test
    void an_inside_closes_when_its_unit_is_taken_out() {
        opened("rack-1");

        session.apply(new TakeOutUnit("rack-1"));

        assertThat(desk.opened().get()).isNull();
    }

    private List<Held> opened(String unit) {
        session.selection().only(unit);
        desk.openSelected();
        return desk.held();
    }
}
