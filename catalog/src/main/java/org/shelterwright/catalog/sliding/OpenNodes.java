package org.shelterwright.catalog.sliding;

import java.util.Arrays;

/** The nodes of a search that are still to be spread from, least key first; of the same key, the one that was entered first. */
final class OpenNodes {
    private long[] keys = new long[64];
    private int[] nodes = new int[64];
    private int size;

    boolean isEmpty() {
        return size == 0;
    }

    void add(long key, int node) {
        if (size == keys.length) {
            keys = Arrays.copyOf(keys, 2 * size);
            nodes = Arrays.copyOf(nodes, 2 * size);
        }
        int at = size++;
        while (at > 0) {
            int above = (at - 1) >>> 1;
            if (!before(key, node, above)) {
                break;
            }
            set(at, keys[above], nodes[above]);
            at = above;
        }
        set(at, key, node);
    }

    /** Takes the first one out. */
    int remove() {
        int first = nodes[0];
        size--;
        long key = keys[size];
        int node = nodes[size];
        int at = 0;
        while (2 * at + 1 < size) {
            int below = 2 * at + 1;
            if (below + 1 < size && before(keys[below + 1], nodes[below + 1], below)) {
                below++;
            }
            if (before(key, node, below)) {
                break;
            }
            set(at, keys[below], nodes[below]);
            at = below;
        }
        set(at, key, node);
        return first;
    }

    private boolean before(long key, int node, int at) {
        return key < keys[at] || (key == keys[at] && node < nodes[at]);
    }

    private void set(int at, long key, int node) {
        keys[at] = key;
        nodes[at] = node;
    }
}
