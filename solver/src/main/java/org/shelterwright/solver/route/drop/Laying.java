package org.shelterwright.solver.route.drop;

/**
 * What a micrometre of a cable costs where it lies, in quarters of one in a tray: on a wall or unit twice as much, hanging free
 * twice as much again, and most where people move, feet tread or a cable runs that it is to keep away from. A corner costs as much as 20 mm on a wall. Common practice;
 * the prices only choose among ways, no limit rests on them.
 */
public final class Laying {
    /** In a tray. */
    public static final int TRAY = 4;

    /** On a wall, the roof or the face of a unit. */
    public static final int SURFACE = 8;

    static final int SURFACE_IN_ZONE = 12;
    static final int HANGING = 16;
    static final int FLOOR = 20;
    static final int HANGING_IN_ZONE = 32;
    static final int SHUNNED = 48;
    static final long CORNER = 20_000L * SURFACE;

    private Laying() {}
}
