package org.shelterwright.layouts.ledger.transport.securing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;
import org.shelterwright.layouts.transport.scene.Resting;

/**
 * Pieces that are held as one: one by itself, or several under the same tie-downs or one on the other; or what of them stands above a
 * tier.
 *
 * @param level height of what it stands on above the deck (µm); 0 of a whole bundle
 */
public record Bundle(PlacedLoad load, List<PlacedPiece> pieces, List<Rope> ropes, int level) {
    public Bundle {
        pieces = List.copyOf(pieces);
        ropes = List.copyOf(ropes);
    }

    /** The bundles of a load, in the order of its pieces. */
    public static List<Bundle> of(LegScene leg, PlacedLoad load) {
        List<Rope> ropes = Rope.of(leg, load);
        int count = load.pieces().size();
        int[] group = new int[count];
        for (int i = 0; i < count; i++) {
            group[i] = i;
        }
        for (Rope rope : ropes) {
            for (PlacedPiece piece : rope.pieces()) {
                join(
                        group,
                        load.pieces().indexOf(rope.pieces().get(0)),
                        load.pieces().indexOf(piece));
            }
        }
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                if (rests(load.pieces().get(i).box(), load.pieces().get(j).box())) {
                    join(group, i, j);
                }
            }
        }
        List<Bundle> bundles = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            if (group[i] == i) {
                int own = i;
                List<PlacedPiece> members = new ArrayList<>();
                for (int j = 0; j < count; j++) {
                    if (group[j] == own) {
                        members.add(load.pieces().get(j));
                    }
                }
                bundles.add(new Bundle(
                        load,
                        members,
                        ropes.stream()
                                .filter(rope -> members.contains(rope.pieces().get(0)))
                                .toList(),
                        0));
            }
        }
        return bundles;
    }

    /**
     * What of it stands on others, from below: for each height on which any does, all from there up, with the lashings that hold any
     * of it. It may slide and tip on what is below, however well that is held.
     */
    public List<Bundle> tiers() {
        return pieces.stream()
                .map(piece -> piece.box().z0())
                .filter(height -> height > level)
                .distinct()
                .sorted()
                .map(this::above)
                .toList();
    }

    private Bundle above(int height) {
        List<PlacedPiece> upper =
                pieces.stream().filter(piece -> piece.box().z0() >= height).toList();
        return new Bundle(
                load,
                upper,
                ropes.stream()
                        .filter(rope -> rope.pieces().stream().anyMatch(upper::contains))
                        .toList(),
                height);
    }

    private static void join(int[] group, int a, int b) {
        int keep = Math.min(group[a], group[b]);
        int drop = Math.max(group[a], group[b]);
        for (int i = 0; i < group.length; i++) {
            if (group[i] == drop) {
                group[i] = keep;
            }
        }
    }

    private static boolean rests(Box upper, Box lower) {
        return upper.z0() > 0
                && upper.z0() == lower.z1()
                && upper.x0() < lower.x1()
                && lower.x0() < upper.x1()
                && upper.y0() < lower.y1()
                && lower.y0() < upper.y1();
    }

    public String name() {
        return Wording.list(pieces.stream().map(PlacedPiece::name).toList());
    }

    /** Short enough for a title. */
    public String title() {
        String those = pieces.size() < 3 ? name() : pieces.get(0).name() + " and " + (pieces.size() - 1) + " more";
        return level == 0 ? those : those + ", on top";
    }

    public List<String> ids() {
        List<String> ids = pieces.stream().map(PlacedPiece::id).collect(Collectors.toList());
        ids.add(load.id());
        return ids;
    }

    /** Greatest mass (kg). */
    public double kg() {
        return pieces.stream().mapToDouble(one -> one.shape().mostKg()).sum();
    }

    /** Why its mass or centre cannot be told. */
    public Optional<String> unknown() {
        return pieces.stream().flatMap(one -> one.shape().unknown().stream()).findFirst();
    }

    public Box box() {
        return pieces.stream().map(PlacedPiece::box).reduce(Box::hull).orElseThrow();
    }

    /** Centre of mass; only of known masses. */
    public Point centre() {
        double kg = 0;
        double x = 0;
        double y = 0;
        double z = 0;
        for (PlacedPiece piece : pieces) {
            Point at = piece.centre();
            if (at != null) {
                double m = piece.shape().mostKg();
                kg += m;
                x += m * at.x();
                y += m * at.y();
                z += m * at.z();
            }
        }
        return kg == 0
                ? box().centre()
                : new Point((int) Math.round(x / kg), (int) Math.round(y / kg), (int) Math.round(z / kg));
    }

    /** Height of its centre of mass above what it stands on (µm). */
    public int height() {
        return centre().z() - level;
    }

    /** What those that it stands with stand on. */
    public Rect foot() {
        Rect foot = null;
        for (PlacedPiece piece : pieces) {
            if (piece.box().z0() == level) {
                Rect own = piece.foot();
                foot = foot == null
                        ? own
                        : new Rect(
                                Math.min(foot.x0(), own.x0()),
                                Math.min(foot.y0(), own.y0()),
                                Math.max(foot.x1(), own.x1()),
                                Math.max(foot.y1(), own.y1()));
            }
        }
        return foot == null ? new Rect(box().x0(), box().y0(), box().x1(), box().y1()) : foot;
    }

    /** The least friction of what it stands with on what it stands on; empty if one is not known. */
    public Optional<Double> friction(LegScene leg) {
        double least = 1;
        for (PlacedPiece piece : pieces) {
            if (level == 0 || piece.box().z0() == level) {
                Optional<Double> own = level == 0 ? leg.friction(piece.shape(), load.car()) : onOthers(leg, piece);
                if (own.isEmpty()) {
                    return Optional.empty();
                }
                least = Math.min(least, own.get());
            }
        }
        return Optional.of(least);
    }

    private Optional<Double> onOthers(LegScene leg, PlacedPiece piece) {
        double least = 1;
        for (PlacedPiece below : Resting.on(piece, load).keySet()) {
            Optional<Double> own = leg.friction(piece.shape(), below.shape());
            if (own.isEmpty()) {
                return Optional.empty();
            }
            least = Math.min(least, own.get());
        }
        return Optional.of(least);
    }

    /** What is to be given so that its friction is known. */
    String frictionUnknown() {
        PlacedPiece first = pieces.get(0);
        if (level == 0) {
            return "The friction of " + first.shape().underside().word() + " on "
                    + load.car().deck().material().word() + " is not known. Give the pair in a table of friction.";
        }
        return "The friction of " + first.shape().underside().word() + " on what " + first.name()
                + " stands on is not known. Give \"top\" of the pieces below, or the pair in a table of friction.";
    }

    /** Distance from its centre of mass to the edge of its foot on a side (µm). */
    public int toEdge(Face side) {
        Point centre = centre();
        Rect foot = foot();
        return switch (side) {
            case FRONT -> foot.x1() - centre.x();
            case REAR -> centre.x() - foot.x0();
            case LEFT -> foot.y1() - centre.y();
            default -> centre.y() - foot.y0();
        };
    }
}
