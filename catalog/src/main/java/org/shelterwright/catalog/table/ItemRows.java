package org.shelterwright.catalog.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Material;
import org.shelterwright.catalog.item.Mounting;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.plausible.ItemOddities;
import org.shelterwright.catalog.plausible.Oddity;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;

/** Turns the rows of an equipment list into items, one after the other. */
final class ItemRows {
    private final List<ImportNote> notes;
    private final List<Item> items = new ArrayList<>();
    private final Map<String, Integer> quantities = new LinkedHashMap<>();
    private final Map<String, String> places = new HashMap<>();

    ItemRows(List<ImportNote> notes) {
        this.notes = notes;
    }

    List<Item> items() {
        return items;
    }

    Map<String, Integer> quantities() {
        return quantities;
    }

    /** Adds the item of a row, or notes why it gives none. */
    void add(RowReader row) {
        String given = row.text(Role.ID);
        String name = row.text(Role.NAME);
        if (given == null && name == null) {
            leftOut(row, "it has neither a name nor an id");
            return;
        }
        Size size = size(row);
        if (size == null) {
            return;
        }
        String id = id(row, given, name == null ? "" : name);
        if (id == null) {
            return;
        }
        Item item = item(row, id, name == null ? id : name, size);
        if (isAbsurd(item, row)) {
            return;
        }
        items.add(item);
        quantities.put(id, row.quantity());
        places.put(id, row.rowAddress());
    }

    /** Whether no such thing exists; notes that, and what is only unusual. */
    private boolean isAbsurd(Item item, RowReader row) {
        boolean absurd = false;
        for (Oddity oddity : ItemOddities.of(item)) {
            String address = oddity.key().equals("mass") ? row.address(Role.MASS) : row.address(Role.DEPTH);
            absurd |= oddity.absurd();
            row.note(address, oddity.absurd() ? ImportNote.Kind.DROPPED : ImportNote.Kind.DOUBTFUL, oddity.sentence());
        }
        if (absurd) {
            leftOut(row, "such a thing does not exist. Maybe a unit is wrong");
        }
        return absurd;
    }

    private @Nullable Size size(RowReader row) {
        Map<Role, @Nullable Integer> lengths = new LinkedHashMap<>();
        for (Role role : List.of(Role.DEPTH, Role.WIDTH, Role.HEIGHT)) {
            lengths.put(role, row.length(role, false));
        }
        List<String> missing = lengths.entrySet().stream()
                .filter(entry -> entry.getValue() == null)
                .map(entry -> entry.getKey().meaning())
                .toList();
        Integer depth = lengths.get(Role.DEPTH);
        Integer width = lengths.get(Role.WIDTH);
        Integer height = lengths.get(Role.HEIGHT);
        if (depth == null || width == null || height == null) {
            leftOut(row, "no usable " + String.join(" and ", missing) + " is given");
            return null;
        }
        return new Size(depth, width, height);
    }

    /** The id given, or one made of the name; {@code null} if a row above has it. */
    private @Nullable String id(RowReader row, @Nullable String given, String name) {
        String wanted = slug(given == null ? name : given);
        if (given != null) {
            String first = places.get(wanted);
            if (first != null) {
                leftOut(row, "its id \"" + wanted + "\" is already given in row " + first.replaceAll("\\D", ""));
                return null;
            }
            if (!wanted.equals(given)) {
                row.note(row.address(Role.ID), ImportNote.Kind.READ_AS, "The id was written as \"" + wanted + "\".");
            }
            return wanted;
        }
        String id = wanted;
        for (int i = 2; places.containsKey(id); i++) {
            id = wanted + "-" + i;
        }
        if (!id.equals(wanted)) {
            row.note(
                    row.address(Role.NAME),
                    ImportNote.Kind.DOUBTFUL,
                    "The name stands already in row "
                            + places.getOrDefault(wanted, "").replaceAll("\\D", "") + ": this one got the id \"" + id
                            + "\". Is it the same thing twice?");
        }
        return id;
    }

    private Item item(RowReader row, String id, String name, Size size) {
        ItemKind kind = oneOf(row, Role.KIND, ItemKind.values(), ItemKind.OTHER);
        Material material = oneOf(row, Role.MATERIAL, Material.values(), Material.PAINTED_SHEET);
        Surface surface = oneOf(row, Role.MOUNTING, Surface.values(), Surface.FLOOR);
        Mounting mounting = new Mounting(Set.of(surface), null, null, false);
        return Item.named(id, name, kind, material, size, mounting, mass(row, name))
                .stackingKg(row.mass(Role.STACKING))
                .note(row.text(Role.NOTE))
                .build();
    }

    private MassData mass(RowReader row, String name) {
        Double massKg = row.mass(Role.MASS);
        if (massKg == null && row.has(Role.MASS)) {
            row.note(
                    row.address(Role.MASS),
                    ImportNote.Kind.ASSUMED,
                    "No mass of \"" + name + "\" is known: what depends on it will not be assessed.");
        }
        return new MassData(massKg, centre(row), basis(row), null, null, null);
    }

    private @Nullable Point centre(RowReader row) {
        Integer x = row.length(Role.CENTRE_X, true);
        Integer y = row.length(Role.CENTRE_Y, true);
        Integer z = row.length(Role.CENTRE_Z, true);
        if (x != null && y != null && z != null) {
            return new Point(x, y, z);
        }
        if (x != null || y != null || z != null) {
            row.note(
                    row.rowAddress(),
                    ImportNote.Kind.DROPPED,
                    "The centre of mass is given in part only, and was not used: it needs x, y and z.");
        }
        return null;
    }

    private MassBasis basis(RowReader row) {
        String text = row.text(Role.BASIS);
        if (text != null) {
            for (MassBasis basis : MassBasis.values()) {
                if (text.equalsIgnoreCase(basis.name()) || text.equalsIgnoreCase(String.valueOf(basis.letter()))) {
                    return basis;
                }
            }
            row.note(
                    row.address(Role.BASIS),
                    ImportNote.Kind.DROPPED,
                    "\"" + text
                            + "\" is no basis of a mass (estimated, calculated, supplier, weighed or the first letter);"
                            + " estimated was taken.");
        }
        return MassBasis.ESTIMATED;
    }

    private static <E extends Enum<E>> E oneOf(RowReader row, Role role, E[] values, E otherwise) {
        String text = row.text(role);
        if (text == null) {
            return otherwise;
        }
        String wanted = slug(text);
        for (E value : values) {
            String known = slug(value.name());
            if (wanted.equals(known) || wanted.equals(known + "s")) {
                return value;
            }
        }
        row.note(
                row.address(role),
                ImportNote.Kind.DROPPED,
                "\"" + text + "\" is no " + role.meaning() + " that is known; \"" + slug(otherwise.name())
                        + "\" was taken. There are: "
                        + Stream.of(values).map(value -> slug(value.name())).collect(Collectors.joining(", ")) + ".");
        return otherwise;
    }

    private static String slug(String text) {
        String slug = text.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}.]+", "-")
                .replaceAll("^-+|-+$", "");
        return slug.isEmpty() ? "item" : slug;
    }

    private void leftOut(RowReader row, String why) {
        notes.add(new ImportNote(row.rowAddress(), ImportNote.Kind.ROW_LEFT_OUT, "The row gave no item: " + why + "."));
    }
}
