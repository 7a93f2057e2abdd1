package org.shelterwright.app.desk.space.solid;

import javafx.scene.paint.Color;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.look.Role;

/** The coats of the scene. */
final class Coats {
    private final Palette.Coat plain;
    private final Palette.Coat chosen;
    private final Palette.Coat xRay;

    Coats(Palette palette, java.util.function.Function<Colour, Color> worn) {
        plain = palette.coat(worn);
        chosen = palette.coat(colour -> worn.apply(isEdge(colour) ? Role.ACCENT.colour() : colour));
        xRay = palette.coat(colour -> worn.apply(Role.FAINT.colour()));
    }

    Palette.Coat plain() {
        return plain;
    }

    Palette.Coat of(Dress dress) {
        return switch (dress) {
            case PLAIN, HIDDEN -> plain;
            case CHOSEN -> chosen;
            case X_RAY -> xRay;
        };
    }

    private static boolean isEdge(Colour colour) {
        return colour.rgb() == Role.EDGE.colour().rgb();
    }
}
