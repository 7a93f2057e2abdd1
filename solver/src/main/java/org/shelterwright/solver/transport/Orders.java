package org.shelterwright.solver.transport;

import java.util.ArrayList;
import java.util.List;

/** All orders of a few things. */
final class Orders {
    private Orders() {}

    /** All orders of the first so many things, in a fixed sequence; those after them keep their place at the end. */
    static <T> List<List<T>> of(List<T> things, int most) {
        List<List<T>> orders = new ArrayList<>();
        int count = Math.min(most, things.size());
        permute(
                new ArrayList<>(things.subList(0, count)),
                new ArrayList<>(),
                things.subList(count, things.size()),
                orders);
        return orders;
    }

    private static <T> void permute(List<T> left, List<T> taken, List<T> rest, List<List<T>> orders) {
        if (left.isEmpty()) {
            List<T> whole = new ArrayList<>(taken);
            whole.addAll(rest);
            orders.add(whole);
            return;
        }
        for (int i = 0; i < left.size(); i++) {
            T one = left.remove(i);
            taken.add(one);
            permute(left, taken, rest, orders);
            taken.remove(taken.size() - 1);
            left.add(i, one);
        }
    }
}
