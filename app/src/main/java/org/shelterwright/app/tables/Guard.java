package org.shelterwright.app.tables;

/**
 * Keeps texts from being run as formulas by a spreadsheet program: a text that begins like a formula gets an apostrophe
 * before it. Numbers are written as numbers and need no guard.
 */
final class Guard {

    private static final String BEGINNINGS = "=+-@\t\r\n";

    private Guard() {}

    static String text(String text) {
        return !text.isEmpty() && BEGINNINGS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
