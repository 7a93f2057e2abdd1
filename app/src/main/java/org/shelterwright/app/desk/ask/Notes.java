package org.shelterwright.app.desk.ask;

import java.util.Map;

/** Sentences above the page that stay until they are answered or no longer hold. For the window's thread. */
public interface Notes {
    /**
     * Shows a sentence, in the place of an earlier one of the same key.
     *
     * @param answers what can be done about it, in their order; the note goes away with any of them
     */
    void show(String key, String sentence, Map<String, Runnable> answers);

    /** Takes a sentence away; one that is not there may be asked for. */
    void hide(String key);

    /** Shows a sentence that needs no answer. */
    default void tell(String sentence) {
        show("told", sentence, Map.of("Good", () -> {}));
    }
}
