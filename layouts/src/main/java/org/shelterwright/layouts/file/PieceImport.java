package org.shelterwright.layouts.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.catalog.json.NearestName;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.table.ImportNote;
import org.shelterwright.catalog.table.PieceList;
import org.shelterwright.catalog.table.PieceRow;
import org.shelterwright.layouts.brief.Inventory;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.brief.Task;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Contents;
import org.shelterwright.layouts.layout.Layout;

/** Takes a person's list of pieces into the inventory of a layout. */
public final class PieceImport {
    private PieceImport() {}

    /**
     * A layout whose brief lists the pieces of a list beside its own.
     *
     * @param notes what became of the list, with addresses, and of names that the brief does not know
     */
    public record Result(Layout layout, int pieces, List<String> notes) {
        public Result {
            notes = List.copyOf(notes);
        }
    }

    /**
     * Adds the pieces of a list. A unit or a task that the brief does not know is told and left out; a task that it does not know is
     * added, done nowhere yet.
     */
    public static Result into(Layout layout, PieceList list) {
        Inventory listed = layout.brief().listed();
        List<String> notes = new ArrayList<>(list.notes().stream().map(ImportNote::text).toList());
        Map<String, Task> tasks = new LinkedHashMap<>();
        listed.tasks().forEach(task -> tasks.put(task.id(), task));
        Set<String> units = BriefReferences.ids(layout.brief().units(), UnitSpec::id);
        Map<String, PieceSpec> specs = new LinkedHashMap<>();
        listed.pieces().forEach(piece -> specs.put(piece.id(), piece));
        Map<String, Piece> kinds = new LinkedHashMap<>(layout.contents().kinds());
        int added = 0;
        for (PieceRow row : list.rows()) {
            String kind = free(row.kind().id(), kinds.keySet());
            kinds.put(kind, named(row.kind(), kind));
            String within = row.within();
            if (within != null && !units.contains(within)) {
                notes.add("The unit \"" + within + "\" of " + row.kind().name() + " is not known."
                        + NearestName.hint(within, units) + " It was left open.");
                within = null;
            }
            String task = row.task() == null ? null : task(row.task(), tasks);
            for (int i = 1; i <= row.quantity(); i++) {
                String id = free(row.quantity() == 1 ? kind : kind + "-" + i, specs.keySet());
                String name = row.quantity() == 1 ? row.kind().name() : row.kind().name() + " " + i;
                specs.put(
                        id,
                        new PieceSpec(
                                id, name, kind, within, task, row.order(), null, task != null, null, row.owner()));
                added++;
            }
        }
        Inventory inventory = new Inventory(List.copyOf(tasks.values()), List.copyOf(specs.values()));
        Layout asked = layout.withAsked(layout.brief().withInventory(inventory), layout.parts());
        return new Result(
                asked.withContents(new Contents(kinds, asked.contents().places())), added, notes);
    }

    private static String task(String name, Map<String, Task> tasks) {
        for (Task task : tasks.values()) {
            if (task.id().equals(name) || task.name().equalsIgnoreCase(name)) {
                return task.id();
            }
        }
        String plain = name.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        String id = free(plain.isEmpty() ? "task" : plain, tasks.keySet());
        tasks.put(id, new Task(id, name, null, null, null));
        return id;
    }

    private static String free(String wanted, Set<String> taken) {
        String id = wanted;
        for (int number = 2; taken.contains(id); number++) {
            id = wanted + "-" + number;
        }
        return id;
    }

    private static Piece named(Piece piece, String id) {
        return new Piece(
                id, piece.name(), piece.size(), piece.mass(), piece.rack(), piece.loose(), piece.power(), piece.note());
    }
}
