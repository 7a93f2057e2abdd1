package org.shelterwright.app.desk.style;

import javafx.beans.InvalidationListener;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.paint.Color;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.look.Ground;
import org.shelterwright.app.look.Role;

/** Light or dark ground, and how large text is. Whatever paints by itself listens and paints again. */
public final class Theme {
    /** Text is never smaller than this (%). */
    public static final int LEAST_TEXT = 100;

    /** Text is never larger than this (%). */
    public static final int MOST_TEXT = 200;

    private final ObjectProperty<Ground> ground = new SimpleObjectProperty<>(Ground.LIGHT);
    private final IntegerProperty textPercent = new SimpleIntegerProperty(LEAST_TEXT) {
        @Override
        public void set(int percent) {
            super.set(Math.max(LEAST_TEXT, Math.min(MOST_TEXT, percent)));
        }
    };

    public ObjectProperty<Ground> ground() {
        return ground;
    }

    /** Size of text in %, held between {@link #LEAST_TEXT} and {@link #MOST_TEXT}. */
    public IntegerProperty textPercent() {
        return textPercent;
    }

    public Color color(Role role) {
        return color(role.colour(ground.get()));
    }

    public static Color color(Colour colour) {
        int rgb = colour.rgb();
        return Color.rgb(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF, colour.opacity());
    }

    /** A size given for text of 100 %, at the present size of text (px). */
    public double sized(double px) {
        return px * textPercent.get() / 100;
    }

    /** Calls when the ground or the size of text has changed. */
    public void onChange(Runnable action) {
        InvalidationListener listener = observable -> action.run();
        ground.addListener(listener);
        textPercent.addListener(listener);
    }
}
