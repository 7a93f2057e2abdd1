package org.shelterwright.layouts.brief;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What goes into the units: pieces, and the tasks that they are used in.
 */
public record Inventory(List<Task> tasks, List<PieceSpec> pieces) {
    public static final Inventory NONE = new Inventory(List.of(), List.of());

    public Inventory {
        tasks = List.copyOf(tasks);
        pieces = List.copyOf(pieces);
        requireUnique("task", tasks.stream().map(Task::id).toList());
        requireUnique("piece", pieces.stream().map(PieceSpec::id).toList());
    }

    public Optional<Task> task(String id) {
        return tasks.stream().filter(one -> one.id().equals(id)).findFirst();
    }

    public Optional<PieceSpec> piece(String id) {
        return pieces.stream().filter(one -> one.id().equals(id)).findFirst();
    }

    public boolean isEmpty() {
        return pieces.isEmpty();
    }

    /** The same with the tasks that a condition tells done at no place that is stated. */
    public Inventory withoutPlaces(Predicate<Task> where) {
        return new Inventory(
                tasks.stream()
                        .map(task -> where.test(task) ? task.atNoPlace() : task)
                        .toList(),
                pieces);
    }

    public Inventory withPieces(List<PieceSpec> others) {
        return new Inventory(tasks, others);
    }

    private static void requireUnique(String kind, List<String> ids) {
        Set<String> seen = new HashSet<>();
        for (String id : ids) {
            if (!seen.add(id)) {
                throw new IllegalArgumentException(
                        "The " + kind + " id \"" + id + "\" is given twice. Rename one of them.");
            }
        }
    }
}
