package org.shelterwright.app.look;

import org.shelterwright.app.drawing.Colour;

/** Colour roles for light ground. No document names a colour directly. */
public enum Role {
    SURFACE(0xE4EAE9),
    PANEL(0xF6F8F7),
    RAISED(0xFFFFFF),
    VIEW(0xDFE7E7),
    FLOOR(0xF7F8F5),
    WALL(0xEEF2F1),
    SIDE_WALL(0xE6ECEB),
    TRACK(0xDDE4E3),
    LINE(0xC3CECE),
    LINES(0x66777C),
    TEXT(0x15211F),
    MUTED(0x46585C),
    FAINT(0x8B999B),
    ACCENT(0x0B5A9C),
    MET(0x2B6657),
    MET_WASH(0xDCEAE5),
    CLOSE(0x865500),
    CLOSE_WASH(0xF7E8C6),
    BROKEN(0xA00C38),
    BROKEN_WASH(0xF8DCE2),
    NOT_ASSESSED(0x65468F),
    NOT_ASSESSED_WASH(0xE9E1F3),
    BAR(0x6C7F84),
    EDGE(0x1C282B),
    ZONE(0x33586A),
    FENCE(0x15211F),
    CENTRE_OF_MASS(0x15211F),
    ON_TOP(0x10191B);

    private final Colour colour;

    Role(int rgb) {
        this.colour = Colour.of(rgb);
    }

    public Colour colour() {
        return colour;
    }
}
