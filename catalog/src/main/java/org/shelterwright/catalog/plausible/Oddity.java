package org.shelterwright.catalog.plausible;

/**
 * A figure that stands out.
 *
 * @param key the key of the entry that holds it, such as "mass"
 * @param sentence what it is, its value, the usual bound and what to do
 * @param absurd true if no such thing exists, so that the entry is refused; false if a person should look at it
 */
public record Oddity(String key, String sentence, boolean absurd) {
    static Oddity absurd(String key, String sentence) {
        return new Oddity(key, sentence, true);
    }

    static Oddity doubtful(String key, String sentence) {
        return new Oddity(key, sentence, false);
    }
}
