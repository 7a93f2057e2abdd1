package org.shelterwright.layouts.ledger.access;

import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.space.Size;

/**
 * An opening as a way on to or off the floor: through a wall, the square touches the wall within the opening; through the
 * roof or floor, it stands squarely under or at it.
 *
 * @param area the opening seen from above; without extent across its wall
 * @param upright whether it lies in a wall
 */
record WayIn(Opening opening, Rect area, boolean upright) {
    static WayIn of(Opening opening, Size inside) {
        return new WayIn(
                opening,
                clipped(Rect.of(opening.area()), inside),
                opening.wall().upright());
    }

    /** The widest square in a free rectangle of the floor that comes through (µm); zero if none. */
    int widest(Rect free) {
        if (!upright) {
            int hatch = Math.min(area.x1() - area.x0(), area.y1() - area.y0());
            return Math.min(hatch, WidestWays.standing(free, area));
        }
        if (free.x0() > area.x1() || free.x1() < area.x0() || free.y0() > area.y1() || free.y1() < area.y0()) {
            return 0;
        }
        int sharedX = Math.min(free.x1(), area.x1()) - Math.max(free.x0(), area.x0());
        int sharedY = Math.min(free.y1(), area.y1()) - Math.max(free.y0(), area.y0());
        return opening.wall().axis() == Axis.X
                ? Math.min(sharedY, free.x1() - free.x0())
                : Math.min(sharedX, free.y1() - free.y0());
    }

    /** The clear width of an opening: along its wall, or its lesser extent in a roof or floor (µm). */
    static int clearWidth(Opening opening) {
        Rect area = Rect.of(opening.area());
        int dx = area.x1() - area.x0();
        int dy = area.y1() - area.y0();
        return switch (opening.wall().axis()) {
            case X -> dy;
            case Y -> dx;
            case Z -> Math.min(dx, dy);
        };
    }

    private static Rect clipped(Rect area, Size inside) {
        return new Rect(
                Math.max(0, Math.min(inside.x(), area.x0())),
                Math.max(0, Math.min(inside.y(), area.y0())),
                Math.max(0, Math.min(inside.x(), area.x1())),
                Math.max(0, Math.min(inside.y(), area.y1())));
    }
}
