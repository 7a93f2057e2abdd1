package org.shelterwright.catalog.json;

/**
 * One thing that is wrong with input.
 *
 * @param where file and, where known, line and column or cell, such as "brief.json, line 12, column 7"
 * @param sentence what is wrong, with its value, the limit and what to do
 */
public record Problem(String where, String sentence) {
    public String text() {
        return where + ": " + sentence;
    }
}
