package org.shelterwright.layouts.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Solid;
import org.shelterwright.catalog.space.Axis;

class StretchTest {
    /** Growing and shrinking back gives every built-in item again; in between, no solid has lost thickness. */
    @Test
    void everyBuiltInItemGrowsOnEveryAxisAndShrinksBack() {
        Random random = new Random(1);
        for (Item item : PostStudy.CATALOG.items()) {
            for (Axis axis : Axis.values()) {
                int by = 1 + random.nextInt(500_000);

                Item grown = new Stretch(item, axis, by).stretched();
                Item back = new Stretch(grown, axis, -by).stretched();

                assertThat(grown.size().along(axis)).isEqualTo(item.size().along(axis) + by);
                for (int i = 0; i < item.solids().size(); i++) {
                    Solid before = item.solids().get(i);
                    Solid after = grown.solids().get(i);
                    assertThat(after.box().extent(axis))
                            .as("%s %s", item.id(), before.name())
                            .isIn(before.box().extent(axis), before.box().extent(axis) + by);
                }
                assertThat(back.solids())
                        .as("%s along %s by %d", item.id(), axis, by)
                        .isEqualTo(item.solids());
                assertThat(back.zones()).isEqualTo(item.zones());
                assertThat(back.fixings()).isEqualTo(item.fixings());
                assertThat(back.movableParts()).isEqualTo(item.movableParts());
                assertThat(back.supports()).isEqualTo(item.supports());
                assertThat(back.size()).isEqualTo(item.size());
            }
        }
    }
}
