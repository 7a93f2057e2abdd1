package org.shelterwright.app.look;

import org.shelterwright.app.drawing.Colour;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Material;

/** Neutral material tints of units, in three flat values by direction. A tint is never a verdict. */
public enum Tint {
    STEEL(0xB7C4C9, 0x93A3A9),
    ALUMINIUM(0xD9DFDF, 0xAEB8B9),
    TIMBER(0xD9C7A2, 0xB09A72),
    PAINT(0xA9BDB4, 0x86A096),
    ENAMEL(0xECEDE8, 0xBFC2BC),
    PLY(0xCDB58C, 0xA58C63),
    RUBBER(0x8A9496, 0x768285),
    FABRIC(0xB4B69A, 0x90947A);

    private final Colour light;
    private final Colour dark;

    Tint(int light, int dark) {
        this.light = Colour.of(light);
        this.dark = Colour.of(dark);
    }

    /** The tint that an item wears, by its kind and what it looks made of. */
    public static Tint of(Item item) {
        return switch (item.kind()) {
            case RACK, POWER_UNIT, MAST_BASE, WINCH -> STEEL;
            case GENERATOR, HEATER, COOLER, LAMP -> ALUMINIUM;
            case TABLE, DESK, BENCH, SHELF -> item.material() == Material.STEEL ? STEEL : TIMBER;
            case CUPBOARD, REFRIGERATOR, SINK -> ENAMEL;
            case CRATE -> item.material() == Material.WOOD ? PLY : of(item.material());
            case BATTERY_BOX, SCREEN -> RUBBER;
            case SEAT, STOWAGE_FRAME -> FABRIC;
            case CABINET, LOCKER, EXTINGUISHER -> PAINT;
            case TANK, INSTRUMENT, OTHER -> of(item.material());
        };
    }

    /** The value on light ground of faces that look up. */
    public Colour top() {
        return top(Ground.LIGHT);
    }

    public Colour top(Ground ground) {
        return side(ground).mixed(Colour.WHITE, ground == Ground.LIGHT ? 0.30 : 0.14);
    }

    /** The value on light ground of faces that look to the side. */
    public Colour side() {
        return side(Ground.LIGHT);
    }

    public Colour side(Ground ground) {
        return ground == Ground.LIGHT ? light : dark;
    }

    /** The value on light ground of faces at an end. */
    public Colour end() {
        return end(Ground.LIGHT);
    }

    public Colour end(Ground ground) {
        return side(ground).mixed(Role.EDGE.colour(), ground == Ground.LIGHT ? 0.17 : 0.24);
    }

    private static Tint of(Material material) {
        return switch (material) {
            case STEEL -> STEEL;
            case PAINTED_SHEET -> PAINT;
            case ALUMINIUM -> ALUMINIUM;
            case WOOD -> TIMBER;
            case PLASTIC -> ENAMEL;
            case FABRIC -> FABRIC;
        };
    }
}
