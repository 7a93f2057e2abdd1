package org.shelterwright.solver.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Tray;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Port;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.solver.fit.planted.PlantedFit;

/** A planted fit whose units have two ports each, in a body with two trays along each side and ducts across, and two wires a unit. */
public final class PlantedWires {
    private PlantedWires() {}

    public static Layout of(long seed, int units) {
        Layout solution = PlantedFit.of(seed, units, 0.1).solution();
        Map<String, Item> items = new LinkedHashMap<>();
        solution.parts().items().forEach((id, item) -> items.put(id, withPorts(item)));
        Map<String, Cable> cables = new LinkedHashMap<>();
        for (String id : List.of("supply-3x1.5", "data-4x2")) {
            cables.put(id, BuiltInCatalog.read().cable(id).orElseThrow());
        }
        SplittableRandom random = new SplittableRandom(seed);
        List<UnitSpec> specs = solution.brief().units();
        List<Wire> wires = new ArrayList<>();
        for (int i = 0; i < 2 * units; i++) {
            String port = i % 2 == 0 ? "/power" : "/data";
            String type = i % 2 == 0 ? "supply-3x1.5" : "data-4x2";
            int a = random.nextInt(specs.size());
            int b = (a + 1 + random.nextInt(specs.size() - 1)) % specs.size();
            wires.add(new Wire(
                    "w" + (i + 1), specs.get(a).id() + port, specs.get(b).id() + port, type, null));
        }
        Parts old = solution.parts();
        return solution.withAsked(
                solution.brief().withWires(wires),
                new Parts(withTrays(old.body()), old.carrier(), old.trailer(), items, cables));
    }

    private static Item withPorts(Item item) {
        int x = item.size().x();
        int z = item.size().z();
        List<Port> ports = List.of(
                new Port("power", new Point(x / 3, 0, z), Face.TOP, CableClass.POWER, "terminals"),
                new Port("data", new Point(2 * x / 3, 0, z), Face.TOP, CableClass.SIGNAL, "8P8C"));
        return item.but().ports(ports).build();
    }

    private static Body withTrays(Body body) {
        int x = body.inside().x() - 100_000;
        int y = body.inside().y();
        int z = body.inside().z() - 50_000;
        List<Tray> trays = new ArrayList<>();
        for (int side = 0; side < 2; side++) {
            int power = side == 0 ? 60_000 : y - 60_000;
            int signal = side == 0 ? 200_000 : y - 200_000;
            trays.add(tray("power " + side, List.of(new Point(100_000, power, z), new Point(x, power, z)), true));
            trays.add(tray("signal " + side, List.of(new Point(100_000, signal, z), new Point(x, signal, z)), false));
        }
        trays.add(tray("power across", List.of(new Point(x, 60_000, z), new Point(x, y - 60_000, z)), true));
        trays.add(tray("signal across", List.of(new Point(x, 200_000, z), new Point(x, y - 200_000, z)), false));
        return new Body(
                body.id(),
                body.name(),
                body.inside(),
                body.outside(),
                body.intrusions(),
                body.openings(),
                body.grids(),
                body.drillZones(),
                body.floorZones(),
                body.crossMembers(),
                trays,
                body.entryPanels(),
                body.provisions(),
                body.tare(),
                body.grossRatingKg(),
                body.note());
    }

    private static Tray tray(String name, List<Point> path, boolean power) {
        List<CableClass> classes = List.of(power ? CableClass.POWER : CableClass.SIGNAL);
        return new Tray(name, path, 150_000, 80_000, classes, List.of(), false, true, null);
    }
}
