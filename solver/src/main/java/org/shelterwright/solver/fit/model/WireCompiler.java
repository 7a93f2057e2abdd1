package org.shelterwright.solver.fit.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.EntryPanel;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Port;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.cable.WireEnd;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.route.TrayTable;

/** Makes a term of each wire with an end at a unit of the body; wires whose cable or ends are not known pull nothing. */
final class WireCompiler {
    private final Scene scene;
    private final Map<String, Integer> stationSlot;
    private final Map<CableClass, TrayTable> tables = new EnumMap<>(CableClass.class);

    private record End(int slot, Point at, @Nullable Item item) {}

    WireCompiler(Scene scene, Map<String, Integer> stationSlot) {
        this.scene = scene;
        this.stationSlot = stationSlot;
    }

    List<WireTerm> terms() {
        List<WireTerm> terms = new ArrayList<>();
        for (Wire wire : scene.brief().wires()) {
            CableClass cableClass = cableClass(wire);
            End from = end(wire, wire.from());
            End to = end(wire, wire.to());
            if (cableClass == null || from == null || to == null || from.slot() == to.slot()) {
                continue;
            }
            End a = from.slot() < 0 ? to : from;
            End b = from.slot() < 0 ? from : to;
            Item item = a.item();
            if (item != null) {
                Item other = b.item();
                terms.add(new WireTerm(
                        a.slot(),
                        b.slot(),
                        a.at(),
                        b.at(),
                        item.size(),
                        other == null ? item.size() : other.size(),
                        longest(wire),
                        tables.computeIfAbsent(cableClass, one -> new TrayTable(scene.body(), one))));
            }
        }
        return terms;
    }

    private @Nullable CableClass cableClass(Wire wire) {
        return scene.layout().parts().cables().values().stream()
                .filter(cable -> cable.id().equals(wire.type()) || cable.family().equals(wire.family()))
                .sorted(Comparator.comparing(Cable::id))
                .map(Cable::cableClass)
                .findFirst()
                .orElse(null);
    }

    private @Nullable End end(Wire wire, String text) {
        String owner = WireEnd.owner(text);
        String name = text.substring(Math.min(text.length(), owner.length() + 1));
        Integer slot = stationSlot.get(owner);
        if (slot == null) {
            String panel = owner.equals("body") ? name : wire.panel();
            Optional<EntryPanel> found = scene.body().entryPanels().stream()
                    .filter(one -> panel == null || one.name().equals(panel))
                    .findFirst();
            return found.map(one -> new End(-1, WireEnd.middle(one), null)).orElse(null);
        }
        for (UnitSpec unit : scene.brief().units()) {
            if (unit.id().equals(owner)) {
                Item item = scene.layout().item(unit);
                for (Port port : item.ports()) {
                    if (port.name().equals(name)) {
                        return new End(slot, port.at(), item);
                    }
                }
            }
        }
        return null;
    }

    /** What may be laid in the body, so that the cut length keeps within what is allowed. */
    private int longest(Wire wire) {
        Integer longest = wire.longest();
        if (longest == null) {
            return Integer.MAX_VALUE;
        }
        double share = scene.rules().valueOr(Figure.CABLE_SLACK_SHARE, 0);
        double ends = 2000 * scene.rules().valueOr(Figure.CABLE_SLACK_END, 0);
        Integer outside = wire.outside();
        return (int) Math.max(0, longest / (1 + share) - ends - (outside == null ? 0 : outside));
    }
}
