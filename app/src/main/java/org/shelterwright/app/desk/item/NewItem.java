package org.shelterwright.app.desk.item;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Material;
import org.shelterwright.catalog.item.Mounting;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Size;

/** Where a new item begins, and the id that it gets. */
public final class NewItem {
    private static final int LONGEST = 60;

    private NewItem() {}

    /** A plain box on the floor of which nothing else is known. */
    public static Item blank() {
        return Item.named(
                        "new-item",
                        "New item",
                        ItemKind.OTHER,
                        Material.PAINTED_SHEET,
                        Size.ofMm(600, 600, 600),
                        new Mounting(EnumSet.of(Surface.FLOOR), null, null, false),
                        new MassData(null, null, MassBasis.ESTIMATED, null, null, null))
                .build();
    }

    /** The same item under an id made from its name that nobody has. */
    public static Item named(Item item, Set<String> taken) {
        String stem = item.name()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
        String first = stem.isEmpty() ? "item" : stem.substring(0, Math.min(LONGEST, stem.length()));
        String id = first;
        for (int number = 2; taken.contains(id); number++) {
            id = first + "-" + number;
        }
        return withId(item, id);
    }

    private static Item withId(Item item, String id) {
        return item.but().id(id).build();
    }
}
