package org.shelterwright.solver.fit.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.ledger.fit.PlacedSupport;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.fit.places.AnchorSet;

/** Compiles the ways to mount one unit on or under the supports of another. */
final class HostCompiler {
    private final Scene scene;
    private final Posing posing;
    private final Map<Held, List<List<PlacedSupport>>> supports = new HashMap<>();

    /** A host in a situation. */
    private record Held(String host, Situation situation) {}

    HostCompiler(Scene scene) {
        this.scene = scene;
        this.posing = new Posing(scene);
    }

    /**
     * Compiles the options of a guest on one possible host.
     *
     * @param hostSlot slot of the host that is there whenever the guest is
     * @param pin what of the guest stays as it is in {@code kept}; the host is then pinned alike
     * @param kept place of the guest so far; {@code null} if it has none
     * @param keptHost place of the host so far; {@code null} if it has none
     */
    List<Option> on(
            UnitSpec guest,
            UnitSpec host,
            int hostSlot,
            Situation governing,
            Pin pin,
            @Nullable Place kept,
            @Nullable Place keptHost) {
        List<Option> options = new ArrayList<>();
        Item item = scene.layout().item(guest);
        boolean elsewhere = kept != null && pin.turn() && !host.id().equals(kept.host());
        for (Surface surface : List.of(Surface.ON_UNIT, Surface.UNDER_UNIT)) {
            boolean other = kept != null && pin.turn() && kept.surface() != surface;
            if (elsewhere || other || !item.mounting().surfaces().contains(surface)) {
                continue;
            }
            for (QuarterTurn turn : OptionCompiler.turns(item)) {
                if (kept == null || !pin.turn() || kept.pose().yaw() == turn) {
                    PlacedUnit posed = posing.at(guest, surface, host.id(), turn);
                    Point relative = kept == null || keptHost == null
                            ? null
                            : kept.pose().at().minus(keptHost.pose().at());
                    addSupports(posed, surface, turn, host, hostSlot, governing, pin, relative, options);
                }
            }
        }
        return options;
    }

    private void addSupports(
            PlacedUnit posed,
            Surface surface,
            QuarterTurn turn,
            UnitSpec host,
            int hostSlot,
            Situation governing,
            Pin pin,
            @Nullable Point relative,
            List<Option> options) {
        QuarterTurn[] turns = QuarterTurn.values();
        List<List<PlacedSupport>> turned = supports(host, governing);
        for (int number = 0; number < turned.get(0).size(); number++) {
            PlacedSupport first = turned.get(0).get(number);
            if (first.under() != (surface == Surface.UNDER_UNIT)) {
                continue;
            }
            AnchorSet[] anchors = new AnchorSet[turns.length];
            for (int t = 0; t < turns.length; t++) {
                Box domain = domain(posed, surface, governing, turned.get(t).get(number));
                if (domain != null && relative != null) {
                    domain = OptionCompiler.pinned(domain, pin, relative);
                }
                anchors[t] = AnchorSet.of(Axis.Z, domain == null ? List.of() : List.of(domain));
            }
            if (scene.layout().item(host).turns().stream().anyMatch(t -> !anchors[t.ordinal()].isEmpty())) {
                var berth = new Option.Berth(hostSlot, number, first.ratingKg());
                options.add(OptionCompiler.make(posed, surface, turn, governing, anchors, berth));
            }
        }
    }

    /** What a host holds things with, for each of its turns. */
    private List<List<PlacedSupport>> supports(UnitSpec host, Situation situation) {
        return supports.computeIfAbsent(new Held(host.id(), situation), key -> {
            List<List<PlacedSupport>> turned = new ArrayList<>();
            for (QuarterTurn turn : QuarterTurn.values()) {
                turned.add(PlacedSupport.of(posing.at(host, Surface.FLOOR, null, turn), situation));
            }
            return turned;
        });
    }

    /** Anchors at which all that touches the support lies within it, relative to the host; {@code null} if none. */
    private static @Nullable Box domain(PlacedUnit posed, Surface surface, Situation situation, PlacedSupport support) {
        Rect foot = foot(posed, surface, situation);
        Rect area = support.area();
        int height = posed.outline(situation).z1();
        int level = surface == Surface.UNDER_UNIT ? support.level() - height : support.level();
        int x0 = area.x0() - foot.x0();
        int y0 = area.y0() - foot.y0();
        int x1 = area.x1() - foot.x1();
        int y1 = area.y1() - foot.y1();
        return x0 > x1 || y0 > y1 ? null : new Box(x0, y0, level, x1, y1, level);
    }

    /** The least rectangle around what touches the support. */
    private static Rect foot(PlacedUnit posed, Surface surface, Situation situation) {
        Box outline = posed.outline(situation);
        List<Box> prints = surface == Surface.ON_UNIT
                ? posed.item().prints().stream()
                        .map(print -> posed.pose(situation)
                                .apply(print.at(0, 0), posed.item().size()))
                        .toList()
                : posed.solids(situation).stream()
                        .filter(solid -> solid.z1() == outline.z1())
                        .toList();
        return Rect.of(prints.stream().reduce(Box::hull).orElse(outline));
    }
}
