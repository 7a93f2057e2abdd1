package org.shelterwright.layouts.layout;

/**
 * What the search must leave as it is.
 *
 * @param x its place along the body
 * @param y its place across the body
 * @param z its height
 * @param turn its turn, and what it is mounted on
 */
public record Pin(boolean x, boolean y, boolean z, boolean turn) {
    public static final Pin NONE = new Pin(false, false, false, false);
    public static final Pin ALL = new Pin(true, true, true, true);

    public boolean whole() {
        return x && y && z && turn;
    }
}
