package org.shelterwright.app.sheet;

import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.type.Typeface;

/** Texts by the height of their capitals (mm), in the steps of ISO 3098-1: 1.8, 2.5, 3.5, 5, 7. */
public final class Lettering {

    private Lettering() {}

    public static Label of(String text, Spot at, double capitals) {
        return new Label(text, at, Typeface.sizeOf(capitals), Weight.REGULAR, Align.START, 0, Role.TEXT.colour());
    }

    public static Label bold(String text, Spot at, double capitals) {
        return of(text, at, capitals).with(Weight.SEMIBOLD);
    }

    public static Label muted(String text, Spot at, double capitals) {
        return in(of(text, at, capitals), Role.MUTED.colour());
    }

    public static Label in(Label label, Colour colour) {
        return new Label(label.text(), label.at(), label.size(), label.weight(), label.align(), label.turn(), colour);
    }

    /** A text that reads from the right edge of the sheet. */
    public static Label upright(String text, Spot at, double capitals, Align align) {
        return new Label(text, at, Typeface.sizeOf(capitals), Weight.REGULAR, align, 90, Role.TEXT.colour());
    }
}
