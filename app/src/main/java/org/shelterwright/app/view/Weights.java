package org.shelterwright.app.view;

import org.shelterwright.app.drawing.LineType;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.look.Role;

/** Line weights on paper (mm): of pictures, and of drawings after the steps of ISO 128-2. */
public final class Weights {

    public static final Pen SILHOUETTE = Pen.of(0.45, Role.EDGE.colour());
    public static final Pen EDGE = Pen.of(0.28, Role.EDGE.colour());
    public static final Pen FITTING = Pen.of(0.2, Role.EDGE.colour().with(0.75));
    public static final Pen HATCH = Pen.of(0.18, Role.EDGE.colour());
    public static final Pen RAIL = Pen.of(0.22, Role.FAINT.colour());
    public static final Pen ZONE = Pen.of(0.35, Role.ZONE.colour());
    public static final Pen ZONE_HATCH = Pen.of(0.2, Role.ZONE.colour());
    public static final Pen LEAF = Pen.of(0.5, Role.ZONE.colour());

    public static final Pen CUT = Pen.of(0.5, Role.EDGE.colour());
    public static final Pen VISIBLE = Pen.of(0.35, Role.EDGE.colour());
    public static final Pen DETAIL = Pen.of(0.13, Role.EDGE.colour());
    public static final Pen THIN = Pen.of(0.18, Role.EDGE.colour());
    public static final Pen CUT_HATCH = Pen.of(0.13, Role.EDGE.colour());
    public static final Pen ZONE_LINE = Pen.of(0.25, Role.ZONE.colour()).with(LineType.LONG_DASH_DOUBLE_DOT);
    public static final Pen ZONE_DETAIL = Pen.of(0.1, Role.ZONE.colour());

    private Weights() {}
}
