package org.shelterwright.catalog.json;

/** A place in a text file; lines and columns are counted from one. */
record Spot(int line, int column) {
    String text() {
        return "line " + line + ", column " + column;
    }
}
