package org.shelterwright.app.desk.hand;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.edit.AddUnit;
import org.shelterwright.layouts.edit.PutUnit;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.ledger.fit.MountFace;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * A unit that is held over the body, from the list or to ask why it does not stand there. It is shown where it can be
 * mounted, with every fixing on a hard point, nearest to what is pointed at: whatever else it breaks there, the ledger says.
 * Each step is tried out in the session; nothing is kept before {@link #drop()}.
 */
public final class Carry {
    /** Of places about as near, one in which it keeps its turn is taken, then the one that is freer (µm). */
    private static final long ABOUT = 120L * Lengths.MM;

    private final Session session;
    private final String order;
    private final Layout base;
    private final UnitSpec unit;
    private final List<Berth> berths;
    private final FreePlace free;
    private @Nullable Place held;

    private record Spot(Berth berth, Point low, long way) {}

    private Carry(Session session, String order, Scene scene, UnitSpec unit) {
        this.session = session;
        this.order = order;
        this.unit = unit;
        base = scene.layout();
        berths = new ArrayList<>(
                Berth.of(scene, unit, new TreeSet<>(scene.layout().item(unit).turns())));
        scene.unit(unit.id()).ifPresent(placed -> berths.removeIf(berth -> ridesOn(scene, berth, placed)));
        if (berths.isEmpty()) {
            throw FreePlace.nowhere(unit);
        }
        free = new FreePlace(scene, unit);
    }

    /**
     * Takes hold of a unit, placed or not.
     *
     * @throws IllegalArgumentException with a sentence if it can be mounted nowhere in the body
     */
    public static Carry take(Session session, String id) {
        Scene scene = session.now().scene();
        UnitSpec unit = scene.brief().units().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The brief has no unit \"" + id + "\"."));
        boolean placed = scene.unit(id).isPresent();
        if (placed && session.situation().get() == Situation.ON_THE_ROAD && stowed(scene, id)) {
            throw new IllegalArgumentException(
                    unit.name()
                            + " has a place of its own on the road. Show the layout on station (S) to mount it elsewhere there.");
        }
        return new Carry(session, placed ? "Move" : "Place", scene, unit);
    }

    /**
     * Takes a new unit of an item from the catalog: it joins the equipment when it is let go of, in the same step.
     *
     * @throws IllegalArgumentException with a sentence if it can be mounted nowhere in the body
     */
    public static Carry draw(Session session, Item item) {
        Layout now = session.now().layout();
        AddUnit added = Addition.of(now, item);
        return new Carry(session, "Add", session.checker().scene(added.apply(now)), added.unit());
    }

    public String unit() {
        return unit.id();
    }

    /**
     * Shows it at the place nearest to what is pointed at, at whole millimetres where nothing else decides.
     *
     * @param at frame of the body. Cost: linear in the places
     */
    public void to(Point at) {
        Point pointed = new Point(wholeMm(at.x()), wholeMm(at.y()), wholeMm(at.z()));
        List<Spot> spots = berths.stream().map(berth -> spot(berth, pointed)).toList();
        long nearest = spots.stream().mapToLong(Spot::way).min().orElseThrow();
        Spot best = spots.stream()
                .filter(spot -> spot.way <= nearest + ABOUT)
                .min(Comparator.comparing((Spot spot) -> !asBefore(spot.berth))
                        .thenComparingInt(spot -> free.trouble(spot.berth, spot.low))
                        .thenComparingLong(Spot::way))
                .orElseThrow();
        Place place = best.berth.at(best.low);
        if (!place.equals(held)) {
            held = place;
            session.tryOut(new PutUnit(unit.id(), place).apply(base));
        }
    }

    /** What it is mounted on where it is shown, such as "on Chart table"; empty before it is shown. */
    public String onto() {
        Place now = held;
        if (now == null) {
            return "";
        }
        String host = now.host();
        String on = host == null
                ? Wording.surface(MountFace.of(now))
                : session.now().scene().unit(host).map(PlacedUnit::name).orElse(host);
        return (now.surface() == Surface.UNDER_UNIT || now.surface() == Surface.ROOF ? "under " : "on ") + on;
    }

    /** Keeps it where it is shown, as one step of the history. */
    public void drop() {
        session.keep(order + " " + unit.name());
    }

    /** Puts it back. */
    public void cancel() {
        session.giveUp();
    }

    /** Whether it keeps the turn that it had. */
    private boolean asBefore(Berth berth) {
        Placement before = base.placements().get(unit.id());
        return before != null
                && before.station().pose().yaw()
                        == berth.posed().pose(Situation.ON_STATION).yaw();
    }

    private static Spot spot(Berth berth, Point pointed) {
        PlacedUnit posed = berth.posed();
        Place place = posed.place(Situation.ON_STATION);
        Point foot =
                posed.outline(Situation.ON_STATION).face(MountFace.of(place)).centre();
        Point low = clamped(pointed.minus(foot), berth.region());
        Point way = low.plus(foot).minus(pointed);
        return new Spot(berth, low, (long) Math.abs(way.x()) + Math.abs(way.y()) + Math.abs(way.z()));
    }

    private static Point clamped(Point point, Box region) {
        Point at = point;
        for (Axis axis : Axis.values()) {
            at = at.with(axis, Holes.clamped(region, axis, point.along(axis)));
        }
        return at;
    }

    private static int wholeMm(int length) {
        return Math.floorDiv(length + Lengths.MM / 2, Lengths.MM) * Lengths.MM;
    }

    private static boolean stowed(Scene scene, String id) {
        Placement placement = scene.layout().placements().get(id);
        return placement != null && placement.road() != null;
    }

    private static boolean ridesOn(Scene scene, Berth berth, PlacedUnit unit) {
        BitSet moved = new BitSet();
        moved.set(unit.index());
        String host = berth.posed().place(Situation.ON_STATION).host();
        return host != null
                && scene.unit(host)
                        .map(PlacedUnit::index)
                        .filter(scene.guestsOf(moved)::get)
                        .isPresent();
    }
}
