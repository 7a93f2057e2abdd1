package org.shelterwright.app.view;

import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.look.Tint;
import org.shelterwright.catalog.space.Face;

/** Three flat values by direction: what looks up, what looks to a side, and what looks forward or back. */
public record Shade(Colour top, Colour side, Colour end) {

    public static Shade of(Tint tint) {
        return new Shade(tint.top(), tint.side(), tint.end());
    }

    public Colour of(Face face) {
        return switch (face.axis()) {
            case X -> end;
            case Y -> side;
            case Z -> top;
        };
    }
}
