package org.shelterwright.app.desk.transport;

/** A short form of a name, for where it has little room: its last word with a figure, or else its last word. */
final class Shortening {
    private Shortening() {}

    static String of(String name) {
        String[] words = name.strip().split("\\s+");
        return words[words.length - 1];
    }
}
