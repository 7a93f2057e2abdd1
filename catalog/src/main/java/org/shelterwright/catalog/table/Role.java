package org.shelterwright.catalog.table;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a column of an equipment list says of an item, with the headers by which it is found. */
public enum Role {
    ID("id", null, "id", "item id", "item no", "item number", "part no", "part number", "ref", "reference", "code"),
    NAME("name", null, "name", "item", "item name", "equipment", "description", "designation", "title"),
    KIND("kind", null, "kind", "type", "category", "class"),
    MATERIAL("material", null, "material"),
    DEPTH("depth", Unit.Dimension.LENGTH, "depth", "d", "deep", "front to back"),
    LENGTH("length", Unit.Dimension.LENGTH, "length", "l", "long"),
    WIDTH("width", Unit.Dimension.LENGTH, "width", "w", "wide", "breadth"),
    HEIGHT("height", Unit.Dimension.LENGTH, "height", "h", "high", "tall"),
    MASS("mass", Unit.Dimension.MASS, "mass", "weight", "wt", "unit mass", "unit weight", "mass each", "weight each"),
    BASIS("basis of the mass", null, "basis", "mass basis", "mass source", "weight source"),
    CENTRE_X("centre of mass, x", Unit.Dimension.LENGTH, "centre x", "center x", "cg x", "cog x", "x cg", "x cog"),
    CENTRE_Y("centre of mass, y", Unit.Dimension.LENGTH, "centre y", "center y", "cg y", "cog y", "y cg", "y cog"),
    CENTRE_Z("centre of mass, z", Unit.Dimension.LENGTH, "centre z", "center z", "cg z", "cog z", "z cg", "z cog"),
    STACKING("mass that may stand on top", Unit.Dimension.MASS, "stacking", "stacking mass", "stacking load"),
    MOUNTING("mounting", null, "mounting", "mounted on", "surface"),
    QUANTITY("quantity", null, "quantity", "qty", "count", "number", "pcs", "pieces", "no of", "number of"),
    NOTE("note", null, "note", "notes", "remark", "remarks", "comment", "comments");

    private final String meaning;
    private final Unit.@Nullable Dimension dimension;
    private final List<String> headers;

    Role(String meaning, Unit.@Nullable Dimension dimension, String... headers) {
        this.meaning = meaning;
        this.dimension = dimension;
        this.headers = List.of(headers);
    }

    public String meaning() {
        return meaning;
    }

    /** What its numbers measure; {@code null} if it holds text or a count. */
    public Unit.@Nullable Dimension dimension() {
        return dimension;
    }

    boolean numeric() {
        return dimension != null || this == QUANTITY;
    }

    /** Finds the role of a header, given in lower case with single blanks. */
    static Optional<Role> of(String header) {
        for (Role role : values()) {
            if (role.headers.contains(header)) {
                return Optional.of(role);
            }
        }
        return Optional.empty();
    }
}
