package org.shelterwright.layouts.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.Inventory;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.layout.Contents;
import org.shelterwright.layouts.layout.Layout;

/**
 * Sets what goes into the units. Pieces that are listed no more lose their places; new ones are still to be stowed.
 *
 * @param inventory {@code null}: nothing is listed
 * @param kinds catalog entries of its pieces
 */
public record SetInventory(@Nullable Inventory inventory, List<Piece> kinds) implements Edit {
    public SetInventory {
        kinds = List.copyOf(kinds);
    }

    @Override
    public String name() {
        return "Set the inventory";
    }

    @Override
    public Layout apply(Layout layout) {
        Map<String, Piece> held = new LinkedHashMap<>(layout.contents().kinds());
        for (Piece kind : kinds) {
            Piece before = held.putIfAbsent(kind.id(), kind);
            if (before != null && !before.equals(kind)) {
                throw new IllegalArgumentException("The layout holds another version of piece \"" + kind.id()
                        + "\". Use the version that it holds.");
            }
        }
        Brief brief = layout.brief().withInventory(inventory);
        for (PieceSpec spec : brief.listed().pieces()) {
            if (!held.containsKey(spec.kind())) {
                throw new IllegalArgumentException("The piece \"" + spec.id() + "\" is of kind \"" + spec.kind()
                        + "\", which is not given.");
            }
        }
        Contents contents = new Contents(held, layout.contents().places()).keptFor(brief);
        return Units.with(layout.withContents(Contents.NONE), brief, layout.parts().items())
                .withContents(contents);
    }
}
