package org.shelterwright.app.desk.transport;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;

/** What is drawn with a loaded car. Not part of the journey. */
final class Overlays {
    private final BooleanProperty outline = new SimpleBooleanProperty(true);
    private final BooleanProperty lashings = new SimpleBooleanProperty(true);
    private final BooleanProperty wheels = new SimpleBooleanProperty(true);
    private final BooleanProperty centres = new SimpleBooleanProperty(false);
    private final BooleanProperty blocking = new SimpleBooleanProperty(true);

    BooleanProperty outline() {
        return outline;
    }

    BooleanProperty lashings() {
        return lashings;
    }

    BooleanProperty wheels() {
        return wheels;
    }

    BooleanProperty centres() {
        return centres;
    }

    BooleanProperty blocking() {
        return blocking;
    }

    void onChange(Runnable action) {
        for (BooleanProperty one : new BooleanProperty[] {outline, lashings, wheels, centres, blocking}) {
            one.addListener((observable, before, now) -> action.run());
        }
    }
}
