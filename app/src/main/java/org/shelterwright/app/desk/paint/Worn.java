package org.shelterwright.app.desk.paint;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import javafx.scene.paint.Color;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.look.Ground;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.Tint;

/**
 * Colours of the drawing model, which are those of light ground, as the theme wears them. Where two roles share a colour
 * on light ground and not on dark, the first of them counts; text on the accent is therefore drawn in the role PANEL.
 */
public final class Worn implements Function<Colour, Color> {
    /** Shares of the edge that the drawing model mixes into a role. */
    private static final double[] MIXES = {0.04, 0.12};

    private final Theme theme;
    private final Map<Integer, Colour> dark = new HashMap<>();

    public Worn(Theme theme) {
        this.theme = theme;
        for (Role role : Role.values()) {
            dark.putIfAbsent(role.colour().rgb(), role.colour(Ground.DARK));
        }
        for (Tint tint : Tint.values()) {
            dark.putIfAbsent(tint.top().rgb(), tint.top(Ground.DARK));
            dark.putIfAbsent(tint.side().rgb(), tint.side(Ground.DARK));
            dark.putIfAbsent(tint.end().rgb(), tint.end(Ground.DARK));
        }
        for (Role role : Role.values()) {
            for (double share : MIXES) {
                dark.putIfAbsent(
                        role.colour().mixed(Role.EDGE.colour(), share).rgb(),
                        role.colour(Ground.DARK).mixed(Role.EDGE.colour(Ground.DARK), share));
            }
        }
    }

    @Override
    public Color apply(Colour colour) {
        if (theme.ground().get() == Ground.LIGHT) {
            return Theme.color(colour);
        }
        return Theme.color(dark.getOrDefault(colour.rgb(), colour).with(colour.opacity()));
    }
}
