package org.shelterwright.layouts.file;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.json.Places;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.layouts.brief.Inventory;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.brief.Task;

/** Holds whatever the inventory of a brief names against its units, its tasks and the body. */
final class InventoryReferences {
    /** Most pieces of one brief; a fit-out has some hundreds. */
    static final int MOST_PIECES = 5_000;

    private final Inventory inventory;
    private final Places places;
    private final Set<String> units;
    private final Findings findings;

    /** @param units ids of the units of the body */
    InventoryReferences(Inventory inventory, Places places, Set<String> units, Findings findings) {
        this.inventory = inventory;
        this.places = places;
        this.units = units;
        this.findings = findings;
    }

    /** @param body {@code null} if it is not known */
    void check(@Nullable Body body) {
        if (inventory.pieces().size() > MOST_PIECES) {
            findings.refuse(
                    places.key("pieces"),
                    "The inventory lists " + inventory.pieces().size() + " pieces; at most " + MOST_PIECES
                            + " are taken. Split it.");
            return;
        }
        for (int i = 0; i < inventory.tasks().size(); i++) {
            task(inventory.tasks().get(i), body, places.key("tasks").index(i));
        }
        Set<String> tasks = BriefReferences.ids(inventory.tasks(), Task::id);
        for (int i = 0; i < inventory.pieces().size(); i++) {
            PieceSpec piece = inventory.pieces().get(i);
            Places at = places.key("pieces").index(i);
            if (piece.within() != null) {
                BriefReferences.known(piece.within(), units, "unit", at.key("within"), findings);
            }
            if (piece.task() != null) {
                BriefReferences.known(piece.task(), tasks, "task", at.key("task"), findings);
            }
        }
    }

    /** Holds the kinds of the pieces against a catalog. */
    void kinds(Catalog catalog) {
        Set<String> kinds = BriefReferences.ids(catalog.pieces(), Piece::id);
        for (int i = 0; i < inventory.pieces().size(); i++) {
            BriefReferences.known(
                    inventory.pieces().get(i).kind(),
                    kinds,
                    "kind of piece",
                    places.key("pieces").index(i).key("kind"),
                    findings);
        }
    }

    private void task(Task task, @Nullable Body body, Places at) {
        if (task.unit() != null) {
            BriefReferences.known(task.unit(), units, "unit", at.key("unit"), findings);
        }
        if (task.opening() != null && body != null) {
            Set<String> openings = BriefReferences.ids(body.openings(), one -> one.name());
            BriefReferences.known(task.opening(), openings, "opening", at.key("opening"), findings);
        }
    }
}
