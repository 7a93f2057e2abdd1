package org.shelterwright.app.look;

import org.shelterwright.app.drawing.Colour;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Material;

/** Neutral material tints of units, in three flat values by direction. A tint is never a verdict. */
public enum Tint {
    STEEL(0xB7C4C9),
    ALUMINIUM(0xD9DFDF),
    TIMBER(0xD9C7A2),
    PAINT(0xA9BDB4),
    ENAMEL(0xECEDE8),
    PLY(0xCDB58C),
    RUBBER(0x8A9496),
    FABRIC(0xB4B69A);

    private static final double TO_WHITE = 0.30;
    private static final double TO_EDGE = 0.17;

    private final Colour side;

    Tint(int rgb) {
        this.side = Colour.of(rgb);
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

    public Colour top() {
        return side.mixed(Colour.WHITE, TO_WHITE);
    }

    public Colour side() {
        return side;
    }

    public Colour end() {
        return side.mixed(Role.EDGE.colour(), TO_EDGE);
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
