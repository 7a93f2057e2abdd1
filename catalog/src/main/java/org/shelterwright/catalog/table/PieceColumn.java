package org.shelterwright.catalog.table;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a column of a list of pieces says, with the headers by which it is found. */
enum PieceColumn {
    NAME(null, "name", "piece", "item", "description", "designation"),
    DEPTH(Unit.Dimension.LENGTH, "depth", "d", "length", "l"),
    WIDTH(Unit.Dimension.LENGTH, "width", "w"),
    HEIGHT(Unit.Dimension.LENGTH, "height", "h"),
    MASS(Unit.Dimension.MASS, "mass", "weight", "wt", "unit mass", "mass each"),
    UNITS(null, "u", "height units", "rack units"),
    QUANTITY(null, "quantity", "qty", "count", "number", "pcs"),
    FRAGILE(null, "fragile"),
    UPRIGHT(null, "upright", "this way up"),
    CLASS(null, "class", "hazard class", "dangerous goods", "dg class"),
    WITHIN(null, "unit", "within", "goes into"),
    TASK(null, "task", "used for", "job"),
    ORDER(null, "order", "order of use"),
    URGENCY(null, "urgency", "at hand", "needed"),
    OWNER(null, "owner", "who");

    private final Unit.@Nullable Dimension dimension;
    private final List<String> headers;

    PieceColumn(Unit.@Nullable Dimension dimension, String... headers) {
        this.dimension = dimension;
        this.headers = List.of(headers);
    }

    Unit.@Nullable Dimension dimension() {
        return dimension;
    }

    String meaning() {
        return headers.get(0);
    }

    static Optional<PieceColumn> of(String header) {
        return Arrays.stream(values())
                .filter(column -> column.headers.contains(header))
                .findFirst();
    }
}
