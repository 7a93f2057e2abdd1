package org.shelterwright.solver.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Presence;
import org.shelterwright.catalog.item.Solid;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.ways.UnitWays;

/** What a sample's order is for: once the reason for a step is taken away, the finding names the units in the way, and only those. */
class SampleBlockersTest {
    private final Checker checker = Checker.standard();

    private static Layout sample(String name) {
        return LayoutFiles.read(Samples.layout(name).orElseThrow()).layout();
    }

    private List<Row> broken(Layout layout, List<String> order) {
        return checker.check(layout.withBoltDown(BoltDownOrder.of(order))).rows().stream()
                .filter(row -> row.limit().equals("boltdown.order") && row.verdict() == Verdict.BROKEN)
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"river-post", "water-lab"})
    void bringingAUnitInTooLateNamesExactlyWhatIsInItsWay(String name) {
        Layout layout = sample(name);
        List<String> order = layout.boltDown().units();
        Scene scene = checker.scene(layout);
        UnitWays ways = new UnitWays(scene);
        int named = 0;
        for (String late : order) {
            if (ways.out(scene.unit(late).orElseThrow(), new BitSet()).free()) {
                continue;
            }
            List<String> moved = new ArrayList<>(order);
            moved.remove(late);
            moved.add(late);
            for (Row row : broken(layout, moved)) {
                if (row.units().get(0).equals(late) && row.finding().contains("does not come in past")) {
                    assertTrueBlockers(scene, moved, row);
                    named++;
                }
            }
        }
        assertThat(named).isPositive();
    }

    @Test
    void aTableMadeWiderBeforeTheRackIsNamed() {
        Layout layout = sample("river-post");
        List<String> order = new ArrayList<>(layout.boltDown().units());
        order.remove("rack-2");
        // Behind what stands at the left wall by then, it comes along the table or not at all.
        order.add(10, "rack-2");
        assertThat(broken(layout, order)).as("past the table as it is").isEmpty();

        Layout wider = withDeeperTable(layout, 1250);
        List<Row> rows = broken(wider, order);

        Scene scene = checker.scene(wider);
        assertThat(rows).anySatisfy(row -> {
            assertThat(row.units()).startsWith("rack-2").contains("chart-table");
            assertThat(row.finding())
                    .startsWith("Telemetry rack 2 does not come in past ")
                    .contains("Chart table");
        });
        rows.stream()
                .filter(row -> row.units().get(0).equals("rack-2"))
                .forEach(row -> assertTrueBlockers(scene, order, row));
    }

    /** With the units of a row gone it comes in past those before it; with any one of them back it does not. */
    private static void assertTrueBlockers(Scene scene, List<String> order, Row row) {
        String late = row.units().get(0);
        List<String> blockers = new ArrayList<>(new HashSet<>(row.units()));
        blockers.remove(late);
        UnitWays ways = new UnitWays(scene);
        PlacedUnit unit = scene.unit(late).orElseThrow();
        BitSet gone = new BitSet();
        gone.set(0, scene.units().size());
        order.subList(0, order.indexOf(late)).forEach(id -> gone.clear(index(scene, id)));
        blockers.forEach(id -> gone.set(index(scene, id)));
        assertThat(ways.out(unit, gone).free()).as(row.finding()).isTrue();
        for (String one : blockers) {
            gone.clear(index(scene, one));
            assertThat(ways.out(unit, gone).free())
                    .as(row.finding() + " " + one)
                    .isFalse();
            gone.set(index(scene, one));
        }
    }

    private static int index(Scene scene, String id) {
        return scene.unit(id).orElseThrow().index();
    }

    private static Layout withDeeperTable(Layout layout, int mm) {
        Map<String, Item> items = new HashMap<>(layout.parts().items());
        String id = layout.brief().units().stream()
                .filter(unit -> unit.id().equals("chart-table"))
                .findFirst()
                .orElseThrow()
                .item();
        Item old = items.get(id);
        Size size = new Size(mm * 1000, old.size().y(), old.size().z());
        items.put(
                id,
                Item.named(old.id(), old.name(), old.kind(), old.material(), size, old.mounting(), old.mass())
                        .solids(List.of(
                                new Solid("block", new Box(0, 0, 0, size.x(), size.y(), size.z()), Presence.ALWAYS)))
                        .fixings(old.fixings())
                        .turns(old.turns())
                        .build());
        Parts parts = layout.parts();
        return layout.withAsked(layout.brief(), new Parts(parts.body(), parts.carrier(), parts.trailer(), items));
    }
}
