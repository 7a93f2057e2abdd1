package org.shelterwright.layouts.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Bringing;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.item.ClearZone;
import org.shelterwright.catalog.item.Fixing;
import org.shelterwright.catalog.item.Interior;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Material;
import org.shelterwright.catalog.item.Mounting;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.item.Plant;
import org.shelterwright.catalog.item.Port;
import org.shelterwright.catalog.item.Power;
import org.shelterwright.catalog.item.Presence;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Solid;
import org.shelterwright.catalog.item.Stowage;
import org.shelterwright.catalog.item.Support;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.space.Size;

/** Builds items for tests, one sentence at a time. Loose, on the floor, 10 kg with its centre in the middle unless told. */
public final class TrialItem {
    private final String id;
    private final Size size;
    private ItemKind kind = ItemKind.OTHER;
    private final List<Solid> solids = new ArrayList<>();
    private final List<ClearZone> zones = new ArrayList<>();
    private final List<MovablePart> movableParts = new ArrayList<>();
    private final List<Fixing> fixings = new ArrayList<>();
    private final List<Support> supports = new ArrayList<>();
    private final List<Port> ports = new ArrayList<>();
    private final List<Tank> tanks = new ArrayList<>();
    private Set<Surface> surfaces = Set.of(Surface.FLOOR);
    private Set<QuarterTurn> turns = Set.of();
    private @Nullable Integer lowestAbove;
    private @Nullable Integer highestAbove;
    private boolean loose = true;
    private @Nullable Double roadHoldN;
    private MassData mass = new MassData(null, null, MassBasis.WEIGHED, 0.0, 0.0, null);
    private @Nullable Double stackingKg;
    private @Nullable Power power;
    private @Nullable Plant plant;
    private @Nullable Interior interior;
    private @Nullable Bringing bringing;
    private final List<Stowage> stowages = new ArrayList<>();

    private TrialItem(String id, Size size) {
        this.id = id;
        this.size = size;
        this.mass = new MassData(
                10.0, new Point(size.x() / 2, size.y() / 2, size.z() / 2), MassBasis.WEIGHED, 0.0, 0.0, null);
    }

    /** Takes whole millimetres. */
    public static TrialItem of(String id, int x, int y, int z) {
        return new TrialItem(id, Size.ofMm(x, y, z));
    }

    public TrialItem kind(ItemKind other) {
        kind = other;
        return this;
    }

    public TrialItem solid(Box box, Presence presence) {
        solids.add(new Solid("solid " + solids.size(), box, presence));
        return this;
    }

    public TrialItem solid(Box box) {
        return solid(box, Presence.ALWAYS);
    }

    public TrialItem zone(Purpose purpose, Box box) {
        zones.add(new ClearZone(purpose.name().toLowerCase() + " " + zones.size(), purpose, box, Presence.ON_STATION));
        return this;
    }

    public TrialItem zone(Purpose purpose, Box box, Presence presence) {
        zones.add(new ClearZone(purpose.name().toLowerCase() + " " + zones.size(), purpose, box, presence));
        return this;
    }

    public TrialItem movable(String name, MovablePart.Kind partKind, Box sweep, @Nullable String securedBy) {
        movableParts.add(new MovablePart(name, partKind, sweep, securedBy));
        return this;
    }

    /** A fixing in a hole that is slotted along an axis. */
    public TrialItem slotted(Point at, Face face, String thread, Axis slot) {
        fixing(at, face, thread);
        Fixing round = fixings.remove(fixings.size() - 1);
        fixings.add(new Fixing(
                round.name(), round.at(), round.face(), round.thread(), round.grade(), round.toolZone(), slot));
        return this;
    }

    /** Adds a fixing and makes the item one that is bolted. */
    public TrialItem fixing(Point at, Face face, String thread) {
        loose = false;
        fixings.add(new Fixing("F" + (fixings.size() + 1), at, face, thread, "8.8", null));
        return this;
    }

    /** Adds a fixing whose grade is not known. */
    public TrialItem ungraded(Point at, Face face, String thread) {
        loose = false;
        fixings.add(new Fixing("F" + (fixings.size() + 1), at, face, thread, null, null));
        return this;
    }

    public TrialItem roadHold(double newtons) {
        roadHoldN = newtons;
        return this;
    }

    public TrialItem bolted() {
        loose = false;
        return this;
    }

    public TrialItem loose() {
        loose = true;
        return this;
    }

    public TrialItem on(Surface first, Surface... others) {
        List<Surface> all = new ArrayList<>(List.of(others));
        all.add(first);
        surfaces = Set.copyOf(all);
        return this;
    }

    public TrialItem wallHeights(int lowestMm, int highestMm) {
        lowestAbove = lowestMm * 1000;
        highestAbove = highestMm * 1000;
        return this;
    }

    public TrialItem turns(QuarterTurn... allowed) {
        turns = Set.of(allowed);
        return this;
    }

    public TrialItem support(String name, Rect area, int heightMm, boolean under, @Nullable Double ratingKg) {
        supports.add(new Support(name, area, heightMm * 1000, under, ratingKg, 1500.0, 2000.0));
        return this;
    }

    public TrialItem stacking(double ratingKg) {
        stackingKg = ratingKg;
        return this;
    }

    public TrialItem mass(@Nullable Double massKg, @Nullable Point centre) {
        mass = new MassData(massKg, centre, MassBasis.WEIGHED, 0.0, 0.0, null);
        return this;
    }

    /** Says how far the stated centre of mass may be off, each way. */
    public TrialItem centreWithin(int mm) {
        mass = new MassData(
                mass.massKg(), mass.centre(), mass.basis(), mass.growthShare(), mass.uncertaintyKg(), mm * 1000);
        return this;
    }

    public TrialItem tank(double leastKg, double fullKg) {
        tanks.add(new Tank("tank", Point.ORIGIN, leastKg, fullKg));
        return this;
    }

    public TrialItem power(Power drawn) {
        power = drawn;
        return this;
    }

    public TrialItem plant(Plant provided) {
        plant = provided;
        return this;
    }

    public TrialItem powerPort() {
        ports.add(new Port("power", Point.ORIGIN, Face.REAR, CableClass.POWER, "IEC 60320 C14"));
        return this;
    }

    public TrialItem port(String name, Point at) {
        ports.add(new Port(name, at, Face.FRONT, CableClass.SIGNAL, "N"));
        return this;
    }

    /** Says what the item is without its content. */
    public TrialItem interior(Interior inside) {
        interior = inside;
        return this;
    }

    public TrialItem stowage(Stowage place) {
        stowages.add(place);
        return this;
    }

    public TrialItem bringing(Bringing how) {
        bringing = how;
        return this;
    }

    public Item build() {
        return Item.named(
                        id,
                        id,
                        kind,
                        Material.STEEL,
                        size,
                        new Mounting(surfaces, lowestAbove, highestAbove, loose, roadHoldN),
                        mass)
                .solids(solids)
                .zones(zones)
                .movableParts(movableParts)
                .fixings(fixings)
                .turns(turns)
                .supports(supports)
                .stackingKg(stackingKg)
                .ports(ports)
                .power(power)
                .plant(plant)
                .stowages(stowages)
                .tanks(tanks)
                .interior(interior)
                .bringing(bringing)
                .build();
    }
}
