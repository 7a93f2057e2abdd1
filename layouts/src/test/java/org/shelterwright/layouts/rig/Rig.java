package org.shelterwright.layouts.rig;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.CrossMember;
import org.shelterwright.catalog.body.FloorZone;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.ContactPatch;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Material;
import org.shelterwright.catalog.item.Mounting;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.Occupant;
import org.shelterwright.layouts.brief.Trailer;
import org.shelterwright.layouts.brief.TrailerLoad;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.scene.Scene;

/**
 * A body of 4 x 2 x 2 m on a carrier, filled for a test. Masses are weighed; growth and uncertainty are none unless set. Unit
 * ids are lower case; names start upper case.
 */
public final class Rig {
    public static final MassData NO_TARE = MassData.of(0, Point.ORIGIN, MassBasis.WEIGHED);

    private MassData tare = NO_TARE;
    private @Nullable Double bodyRatingKg;
    private @Nullable Carrier carrier;
    private @Nullable Carrier trailer;
    private int crew;
    private final List<Occupant> occupants = new ArrayList<>();
    private final List<FloorZone> zones = new ArrayList<>();
    private final List<CrossMember> members = new ArrayList<>();
    private final List<Provision> provisions = new ArrayList<>();
    private final Map<String, Item> items = new LinkedHashMap<>();
    private final List<UnitSpec> units = new ArrayList<>();
    private final Map<String, Placement> placements = new LinkedHashMap<>();
    private final List<TrailerLoad> loads = new ArrayList<>();
    private final Map<String, Double> limits = new LinkedHashMap<>();
    private final List<RuleSet> ruleSets = new ArrayList<>();

    public Rig() {
        limit(Figure.GROWTH_WEIGHED, 0)
                .limit(Figure.UNCERTAINTY_WEIGHED, 0)
                .limit(Figure.PERSON_MASS, 75)
                .limit(Figure.PERSON_HEIGHT, 700);
    }

    public Rig tare(MassData data) {
        tare = data;
        return this;
    }

    public Rig bodyRating(double kg) {
        bodyRatingKg = kg;
        return this;
    }

    public Rig carrier(Carrier one) {
        carrier = one;
        return this;
    }

    public Rig trailer(Carrier one) {
        trailer = one;
        return this;
    }

    public Rig provision(Provision provision) {
        provisions.add(provision);
        return this;
    }

    public Rig crew(int people) {
        crew = people;
        return this;
    }

    public Rig occupant(String unit, Situation situation) {
        occupants.add(new Occupant(unit, situation));
        return this;
    }

    public Rig zone(FloorZone zone) {
        zones.add(zone);
        return this;
    }

    public Rig member(CrossMember member) {
        members.add(member);
        return this;
    }

    public Rig limit(Figure figure, double value) {
        limits.put(figure.id(), value);
        return this;
    }

    public Rig without(Figure figure) {
        limits.remove(figure.id());
        return this;
    }

    public Rig rules(RuleSet set) {
        ruleSets.add(set);
        return this;
    }

    /** Puts a cube of 1 m into the body with the centre of mass in its middle, its low corner at (x, y, z) mm. */
    public Rig cube(String unit, double kg, int x, int y, int z) {
        return put(unit, item(unit, Size.ofMm(1000, 1000, 1000), mass(kg, 500, 500, 500)), at(x, y, z), null);
    }

    public Rig put(String unit, Item item, Place station, @Nullable Place road) {
        items.put(item.id(), item);
        units.add(spec(unit, item));
        placements.put(unit, new Placement(unit, station, road, Pin.NONE));
        return this;
    }

    public Rig toPlace(String unit, Item item) {
        items.put(item.id(), item);
        units.add(spec(unit, item));
        return this;
    }

    public Rig load(String unit, Item item, Pose pose) {
        items.put(item.id(), item);
        loads.add(new TrailerLoad(spec(unit, item), pose));
        return this;
    }

    private static UnitSpec spec(String unit, Item item) {
        return new UnitSpec(unit, Character.toUpperCase(unit.charAt(0)) + unit.substring(1), item.id(), "group");
    }

    public static Place at(int x, int y, int z) {
        return Place.onFloor(Pose.at(Point.ofMm(x, y, z)));
    }

    public static MassData mass(double kg, int x, int y, int z) {
        return MassData.of(kg, Point.ofMm(x, y, z), MassBasis.WEIGHED);
    }

    public static Item item(String id, Size size, MassData mass, Tank... tanks) {
        return item(id, size, mass, List.of(), tanks);
    }

    public static Item item(String id, Size size, MassData mass, List<ContactPatch> patches, Tank... tanks) {
        return Item.named(
                        id,
                        id,
                        ItemKind.OTHER,
                        Material.STEEL,
                        size,
                        new Mounting(Set.of(Surface.values()), null, null, true),
                        mass)
                .patches(patches)
                .tanks(List.of(tanks))
                .build();
    }

    public Layout layout() {
        Body body = new Body(
                "test-body",
                "Test body",
                Size.ofMm(4000, 2000, 2000),
                Box.ofMm(-50, -50, -100, 4050, 2050, 2050),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                zones,
                members,
                List.of(),
                List.of(),
                provisions,
                tare,
                bodyRatingKg,
                null);
        Brief brief = Brief.named("test", "Test", body.id())
                .carrier(carrier == null ? null : carrier.id())
                .trailer(trailer == null ? null : new Trailer(trailer.id(), loads))
                .units(units)
                .crew(crew)
                .ruleSets(ruleSets.stream().map(RuleSet::id).toList())
                .limits(limits)
                .build();
        brief = brief.withOccupants(occupants);
        return Layout.empty(brief, new Parts(body, carrier, trailer, items)).withPlacements(placements);
    }

    public Scene scene() {
        Layout layout = layout();
        return Scene.of(layout, Rules.of(layout.brief(), ruleSets));
    }

    /** The rows of one limit, in the order of the ledger. */
    public List<Row> rows(Limit limit) {
        return LedgerBuilder.full(new LimitBook(List.of(limit)), scene()).rows();
    }

    /** The only row of a limit. */
    public Row row(Limit limit) {
        List<Row> rows = rows(limit);
        if (rows.size() != 1) {
            throw new AssertionError("One row was expected, but there are " + rows);
        }
        return rows.get(0);
    }
}
