package org.shelterwright.app.look;

import org.shelterwright.app.drawing.Colour;

/** Colour roles, each for light and for dark ground. Nothing names a colour directly. */
public enum Role {
    SURFACE(0xE4EAE9, 0x0E1417),
    PANEL(0xF6F8F7, 0x171F23),
    RAISED(0xFFFFFF, 0x202A2F),
    VIEW(0xDFE7E7, 0x11191C),
    FLOOR(0xF7F8F5, 0x2E3B40),
    WALL(0xEEF2F1, 0x263237),
    SIDE_WALL(0xE6ECEB, 0x202B30),
    TRACK(0xDDE4E3, 0x2A363B),
    LINE(0xC3CECE, 0x35444A),
    LINES(0x66777C, 0x7C9097),
    TEXT(0x15211F, 0xE8EEED),
    MUTED(0x46585C, 0xA6B6BA),
    FAINT(0x8B999B, 0x6B7C82),
    ACCENT(0x0B5A9C, 0x7DBDF2),
    ON_ACCENT(0xFFFFFF, 0x0A1B28),
    WASH(0xD6E6F3, 0x1B3A52),
    FOCUS(0x0B5A9C, 0x7DBDF2),
    MET(0x2B6657, 0x84CBB5),
    MET_WASH(0xDCEAE5, 0x18332C),
    CLOSE(0x865500, 0xE8B84C),
    CLOSE_WASH(0xF7E8C6, 0x3A2D10),
    BROKEN(0xA00C38, 0xFF8E7A),
    BROKEN_WASH(0xF8DCE2, 0x451C18),
    NOT_ASSESSED(0x65468F, 0xE4B6E2),
    NOT_ASSESSED_WASH(0xE9E1F3, 0x3B2340),
    BAR(0x6C7F84, 0x8EA1A7),
    EDGE(0x1C282B, 0x070B0D),
    ZONE(0x33586A, 0x8FB6C8),
    FENCE(0x15211F, 0xE8EEED),
    CENTRE_OF_MASS(0x15211F, 0xE8EEED),
    POWER(0x6A2400, 0xE0A074),
    SIGNAL(0x0A6079, 0x6CC6E0),
    RADIO(0x7A2A6E, 0xDF9AD3),
    FIBRE(0x777A00, 0xB4CF6B),
    EARTH(0x1F5A2C, 0x8CCB96),
    ON_TOP(0x10191B, 0x10191B);

    private final Colour light;
    private final Colour dark;

    Role(int light, int dark) {
        this.light = Colour.of(light);
        this.dark = Colour.of(dark);
    }

    /** The colour on light ground, as documents use it. */
    public Colour colour() {
        return light;
    }

    public Colour colour(Ground ground) {
        return ground == Ground.LIGHT ? light : dark;
    }
}
