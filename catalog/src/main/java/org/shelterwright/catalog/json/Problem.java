package org.shelterwright.catalog.json;

/**
 * One thing that is wrong with input.
 *
 * @param where file and, where known, line and column or cell, such as "brief.json, line 12, column 7"
 * @param sentence what is wrong, with its value, the limit and what to do
 */
public record Problem(String where, String sentence) {
    private static final int LONGEST = 1_000;
    private static final int TAIL = 300;

    /** A sentence that quotes a very long text is cut in its middle. */
    public Problem {
        if (sentence.length() > LONGEST) {
            sentence = sentence.substring(0, LONGEST - TAIL) + " … " + sentence.substring(sentence.length() - TAIL);
        }
    }

    public String text() {
        return where + ": " + sentence;
    }
}
