package org.shelterwright.layouts.ledger.transport.securing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.transit.LashingKind;
import org.shelterwright.layouts.transport.Lashing;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/**
 * A lashing in the frame of the car. Lengths in micrometres.
 *
 * @param pieces that it holds
 * @param top its upper end: the eye, or the edge of the load at the first anchor's side
 * @param top2 the other upper edge; {@code null} of a direct lashing
 * @param foot anchor point
 * @param foot2 the other anchor point; {@code null} of a direct lashing
 * @param anchorN rating of the weaker anchor (N); {@code null} if one is not known
 * @param eyeN rating of the eye (N); {@code null} if not known or not apt
 */
public record Rope(
        Lashing lashing,
        LashingKind kind,
        List<PlacedPiece> pieces,
        Point top,
        @Nullable Point top2,
        Point foot,
        @Nullable Point foot2,
        @Nullable Double anchorN,
        @Nullable Double eyeN) {
    public Rope {
        pieces = List.copyOf(pieces);
    }

    /** The lashings of a load whose parts are all known. */
    public static List<Rope> of(LegScene leg, PlacedLoad load) {
        List<Rope> ropes = new ArrayList<>();
        for (Lashing lashing : load.load().lashings()) {
            of(leg, load, lashing).ifPresent(ropes::add);
        }
        return ropes;
    }

    /** One lashing; empty if it names what there is not. */
    public static Optional<Rope> of(LegScene leg, PlacedLoad load, Lashing lashing) {
        LashingKind kind =
                leg.journey().parts().transit().lashing(lashing.kind()).orElse(null);
        Provision anchor = load.car().anchor(lashing.anchor()).orElse(null);
        List<PlacedPiece> pieces = new ArrayList<>();
        lashing.what().forEach(id -> load.piece(id).ifPresent(pieces::add));
        if (kind == null || anchor == null || pieces.size() != lashing.what().size()) {
            return Optional.empty();
        }
        String eye = lashing.eye();
        String second = lashing.anchor2();
        if (eye != null) {
            PlacedPiece piece = pieces.get(0);
            return piece.eye(eye)
                    .map(top -> new Rope(
                            lashing,
                            kind,
                            pieces,
                            top,
                            null,
                            anchor.at(),
                            null,
                            anchor.ratingN(),
                            piece.shape().eye(eye).map(Provision::ratingN).orElse(null)));
        }
        return second == null
                ? Optional.empty()
                : load.car().anchor(second).map(other -> over(lashing, kind, pieces, anchor, other));
    }

    private static Rope over(Lashing lashing, LashingKind kind, List<PlacedPiece> pieces, Provision a, Provision b) {
        Box hull = pieces.stream().map(PlacedPiece::box).reduce(Box::hull).orElseThrow();
        Integer given = lashing.at();
        int x = given == null ? (a.at().x() + b.at().x()) / 2 : given;
        boolean rightFirst = a.at().y() <= b.at().y();
        Point right = new Point(x, hull.y0(), hull.z1());
        Point left = new Point(x, hull.y1(), hull.z1());
        Double weaker =
                a.ratingN() == null || b.ratingN() == null ? null : Double.valueOf(Math.min(a.ratingN(), b.ratingN()));
        return new Rope(
                lashing,
                kind,
                pieces,
                rightFirst ? right : left,
                rightFirst ? left : right,
                a.at(),
                b.at(),
                weaker,
                null);
    }

    public boolean direct() {
        return top2 == null;
    }

    /** Length between its hooks (µm). */
    public double length() {
        Point otherTop = top2;
        Point otherFoot = foot2;
        return otherTop == null || otherFoot == null
                ? distance(top, foot)
                : distance(top, foot) + distance(top, otherTop) + distance(otherTop, otherFoot);
    }

    /** Sine of its angle to the floor; of a tie-down that of its flatter leg. */
    public double sine() {
        Point otherTop = top2;
        Point otherFoot = foot2;
        double first = sine(top, foot);
        return otherTop == null || otherFoot == null ? first : Math.min(first, sine(otherTop, otherFoot));
    }

    /** Angle to the floor (degrees). */
    public double angle() {
        return Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, sine()))));
    }

    /** Part of its pull along x, from -1 to 1, as it acts on the load; of a direct lashing. */
    double alongX() {
        return (foot.x() - (double) top.x()) / distance(top, foot);
    }

    /** Part of its pull along y, as it acts on the load; of a direct lashing. */
    double alongY() {
        return (foot.y() - (double) top.y()) / distance(top, foot);
    }

    /** What the weakest of lashing, eye and anchor bears (N); {@code null} if a rating is not known. */
    public @Nullable Double bearsN() {
        if (anchorN == null || direct() && eyeN == null) {
            return null;
        }
        double least = Math.min(kind.capacityN(), anchorN);
        return direct() && eyeN != null ? Math.min(least, eyeN) : least;
    }

    /** Which rating is missing, in words; empty if none is. */
    Optional<String> unknown() {
        if (anchorN == null) {
            return Optional.of("The anchor point \"" + lashing.anchor() + "\" of lashing " + lashing.key()
                    + " states no rating. Give \"ratingN\" of its row.");
        }
        return direct() && eyeN == null
                ? Optional.of("The eye \"" + lashing.eye() + "\" of lashing " + lashing.key()
                        + " states no rating. Give \"ratingN\" of it.")
                : Optional.empty();
    }

    private static double sine(Point top, Point foot) {
        double length = distance(top, foot);
        return length == 0 ? 0 : (top.z() - (double) foot.z()) / length;
    }

    private static double distance(Point a, Point b) {
        double dx = a.x() - (double) b.x();
        double dy = a.y() - (double) b.y();
        double dz = a.z() - (double) b.z();
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }
}
