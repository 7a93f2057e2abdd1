package org.shelterwright.layouts.study;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Millimetres;

/**
 * An item that comes otherwise than its catalog entry says: "the batteries are 40 mm deeper and 6 kg heavier".
 *
 * @param item id of the catalog entry
 * @param deeper by how much it grows towards its front (µm), less than zero if it shrinks; {@code null}: not at all
 * @param wider the same towards its left
 * @param taller the same upwards
 * @param heavierKg mass that it has more (kg); {@code null}: none
 */
public record ItemChange(
        String item,
        @Nullable @Millimetres Integer deeper,
        @Nullable @Millimetres Integer wider,
        @Nullable @Millimetres Integer taller,
        @Nullable Double heavierKg) {
    private static final int MOST = 10 * Lengths.M;

    public ItemChange {
        within("deeper", deeper);
        within("wider", wider);
        within("taller", taller);
        if (heavierKg != null) {
            Figures.within("mass that it has more (kg)", heavierKg, -100_000, 100_000);
        }
    }

    /**
     * The item as it comes. It keeps its id; its name says what changed.
     *
     * @throws IllegalArgumentException with a sentence if it cannot shrink by so much
     */
    public Item of(Item old) {
        Item changed = old;
        changed = grown(changed, Axis.X, deeper);
        changed = grown(changed, Axis.Y, wider);
        changed = grown(changed, Axis.Z, taller);
        changed = Stretch.heavier(changed, heavierKg == null ? 0 : heavierKg);
        List<String> words = words();
        return words.isEmpty()
                ? changed
                : changed.but()
                        .name(old.name() + ", " + String.join(", ", words))
                        .build();
    }

    /** What changed, such as "40 mm deeper". */
    List<String> words() {
        List<String> words = new ArrayList<>();
        word(words, deeper, "deeper", "less deep");
        word(words, wider, "wider", "narrower");
        word(words, taller, "taller", "lower");
        if (heavierKg != null && heavierKg != 0) {
            String kg =
                    BigDecimal.valueOf(Math.abs(heavierKg)).stripTrailingZeros().toPlainString();
            words.add(kg + " kg " + (heavierKg > 0 ? "heavier" : "lighter"));
        }
        return words;
    }

    private static void word(List<String> words, @Nullable Integer by, String more, String less) {
        if (by != null && by != 0) {
            words.add(Lengths.format(Math.abs(by)) + " mm " + (by > 0 ? more : less));
        }
    }

    private static Item grown(Item item, Axis axis, @Nullable Integer by) {
        return by == null || by == 0 ? item : new Stretch(item, axis, by).stretched();
    }

    private static void within(String what, @Nullable Integer by) {
        if (by != null && Math.abs((long) by) > MOST) {
            throw new IllegalArgumentException(
                    "An item cannot come " + Lengths.format(by) + " mm " + what + "; at most 10 m are taken.");
        }
    }
}
