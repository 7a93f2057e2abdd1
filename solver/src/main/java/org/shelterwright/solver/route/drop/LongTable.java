package org.shelterwright.solver.route.drop;

import java.util.Arrays;

/**
 * A table of numbers by numbers, for millions of look-ups: open addressing, no removal of single ones. Emptying it costs what is
 * in it. Not for several threads.
 */
final class LongTable {
    /** What an absent key gives. */
    static final long NONE = Long.MAX_VALUE;

    private long[] keys = new long[1 << 12];
    private long[] values = new long[1 << 12];
    private int[] used = new int[1 << 11];
    private int size;

    LongTable() {
        Arrays.fill(values, NONE);
    }

    long get(long key) {
        return values[slot(keys, values, key)];
    }

    void put(long key, long value) {
        int slot = slot(keys, values, key);
        if (values[slot] == NONE) {
            used[size++] = slot;
        }
        keys[slot] = key;
        values[slot] = value;
        if (2 * size >= keys.length) {
            grow();
        }
    }

    void clear() {
        for (int i = 0; i < size; i++) {
            values[used[i]] = NONE;
        }
        size = 0;
    }

    private void grow() {
        long[] oldKeys = keys;
        long[] oldValues = values;
        keys = new long[2 * oldKeys.length];
        values = new long[2 * oldKeys.length];
        used = new int[oldKeys.length];
        size = 0;
        Arrays.fill(values, NONE);
        for (int i = 0; i < oldKeys.length; i++) {
            if (oldValues[i] != NONE) {
                int slot = slot(keys, values, oldKeys[i]);
                keys[slot] = oldKeys[i];
                values[slot] = oldValues[i];
                used[size++] = slot;
            }
        }
    }

    private static int slot(long[] keys, long[] values, long key) {
        long mixed = key * 0x9E3779B97F4A7C15L;
        int slot = (int) (mixed >>> 32) & (keys.length - 1);
        while (values[slot] != NONE && keys[slot] != key) {
            slot = (slot + 1) & (keys.length - 1);
        }
        return slot;
    }
}
