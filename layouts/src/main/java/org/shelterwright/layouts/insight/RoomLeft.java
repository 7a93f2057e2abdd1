package org.shelterwright.layouts.insight;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Material;
import org.shelterwright.catalog.item.Mounting;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.PlacedZone;
import org.shelterwright.layouts.scene.Scene;

/**
 * What still fits.
 *
 * @param anywhere the largest cuboid that holds no solid and no clear zone, on station and on the road; {@code null} if there is none
 * @param onFloor the largest such cuboid on the floor that would break no limit of place if something as large stood there;
 *     {@code null} if none was found
 * @param standing how many large places on the floor would break a limit, such as a walkway
 * @param breaks the row that the largest of these would break; {@code null} if there are none
 * @param reserves what is left of what is used up
 */
public record RoomLeft(
        @Nullable Box anywhere,
        @Nullable Box onFloor,
        int standing,
        @Nullable Row breaks,
        List<Reserve> reserves) {
    private static final String PROBE = "what-still-fits";
    private static final int MOST_PROBES = 60;

    public RoomLeft {
        reserves = List.copyOf(reserves);
    }

    /** Looks for what still fits. Cost: a full check for each large place on the floor that is tried, at most sixty. */
    public static RoomLeft of(Checker checker, Layout layout) {
        Scene scene = checker.scene(layout);
        Ledger ledger = checker.check(layout);
        OpenBoxes open = new OpenBoxes(scene.body().inside().box(), filled(scene));
        Worsening worsening = new Worsening(ledger);
        Row breaks = null;
        Box onFloor = null;
        int standing = 0;
        for (Box box : open.onFloor()) {
            if (standing >= MOST_PROBES) {
                break;
            }
            Optional<Row> broken = worsening.first(checker.check(probed(layout, box)));
            if (broken.isEmpty()) {
                onFloor = box;
                break;
            }
            breaks = breaks == null ? broken.get() : breaks;
            standing++;
        }
        return new RoomLeft(open.largest().orElse(null), onFloor, standing, breaks, Reserve.of(scene, ledger));
    }

    /** What stands in the way of anything new: intrusions, solids and clear zones in both situations. */
    static List<Box> filled(Scene scene) {
        List<Box> filled = new ArrayList<>();
        scene.body().intrusions().stream().map(Intrusion::box).forEach(filled::add);
        for (PlacedUnit unit : scene.units()) {
            for (Situation situation : Situation.values()) {
                filled.addAll(unit.solids(situation));
                unit.zones(situation).stream().map(PlacedZone::box).forEach(filled::add);
            }
        }
        return filled;
    }

    /** The layout with something of that size, without mass, standing there. */
    private static Layout probed(Layout layout, Box box) {
        Item item = Item.named(
                        PROBE,
                        "Something new",
                        ItemKind.CRATE,
                        Material.STEEL,
                        size(box),
                        new Mounting(Set.of(Surface.FLOOR), null, null, false, null),
                        new MassData(null, null, MassBasis.ESTIMATED, null, null, null))
                .build();
        List<UnitSpec> units = new ArrayList<>(layout.brief().units());
        units.add(new UnitSpec(PROBE, "Something new", PROBE, PROBE));
        Brief brief = layout.brief().withUnits(units);
        Parts old = layout.parts();
        Map<String, Item> items = new LinkedHashMap<>(old.items());
        items.put(PROBE, item);
        return layout.withAsked(brief, new Parts(old.body(), old.carrier(), old.trailer(), items, old.cables()))
                .with(Placement.of(PROBE, Place.onFloor(Pose.at(new Point(box.x0(), box.y0(), box.z0())))));
    }

    private static Size size(Box box) {
        return new Size(box.x1() - box.x0(), box.y1() - box.y0(), box.z1() - box.z0());
    }
}
