package org.shelterwright.layouts.cable;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.layouts.cable.RouteShape.Stretch;

/**
 * A section of a compartment of a tray, from one place where a cable comes or goes to the next, with what lies in it.
 *
 * @param part number of the compartment, from zero
 * @param from station along the tray (µm)
 * @param to station along the tray (µm)
 * @param wires ids of the wires that lie in it, in the order of the brief
 * @param cablesMm2 outer cross-sections of their cables (mm²)
 * @param insideMm2 inside cross-section of the compartment (mm²)
 */
public record TrayUse(
        TrayPath tray, int part, int from, int to, List<String> wires, double cablesMm2, double insideMm2) {
    public TrayUse {
        wires = List.copyOf(wires);
    }

    private record Place(String tray, int part) {}

    /** The share of the cross-section that is taken. */
    public double share() {
        return cablesMm2 / insideMm2;
    }

    /** Such as "left power tray", or "left tray, compartment 2". */
    public String name() {
        int parts = tray.tray().parts().size();
        return tray.tray().name() + (parts > 1 ? ", compartment " + (part + 1) : "");
    }

    /** All sections in which something lies, tray by tray in the order of first use, each from its beginning on. */
    static List<TrayUse> of(List<RouteShape> shapes, Map<String, Cable> cables) {
        Map<Place, List<RouteShape>> users = new LinkedHashMap<>();
        Map<Place, Stretch> samples = new LinkedHashMap<>();
        for (RouteShape shape : shapes) {
            for (Stretch stretch : shape.stretches()) {
                Place place = new Place(stretch.tray().tray().name(), stretch.part());
                List<RouteShape> list = users.computeIfAbsent(place, key -> new ArrayList<>());
                samples.putIfAbsent(place, stretch);
                if (!list.contains(shape)) {
                    list.add(shape);
                }
            }
        }
        List<TrayUse> uses = new ArrayList<>();
        users.forEach((place, list) -> {
            Stretch sample = samples.get(place);
            if (sample != null) {
                sections(place, list, sample, cables, uses);
            }
        });
        return uses;
    }

    private static void sections(
            Place place, List<RouteShape> users, Stretch sample, Map<String, Cable> cables, List<TrayUse> uses) {
        TreeSet<Integer> cuts = new TreeSet<>();
        for (RouteShape user : users) {
            in(place, user).forEach(stretch -> {
                cuts.add(stretch.from());
                cuts.add(stretch.to());
            });
        }
        Integer from = null;
        for (int to : cuts) {
            if (from != null) {
                int low = from;
                List<String> wires = new ArrayList<>();
                double areaMm2 = 0;
                for (RouteShape user : users) {
                    boolean there =
                            in(place, user).stream().anyMatch(stretch -> stretch.from() <= low && to <= stretch.to());
                    Cable cable = cables.get(user.route().cable());
                    if (there) {
                        wires.add(user.route().wire());
                        areaMm2 += cable == null ? 0 : cable.areaMm2();
                    }
                }
                if (!wires.isEmpty()) {
                    double insideMm2 = sample.tray().tray().areaMm2(place.part());
                    uses.add(new TrayUse(sample.tray(), place.part(), low, to, wires, areaMm2, insideMm2));
                }
            }
            from = to;
        }
    }

    private static List<Stretch> in(Place place, RouteShape shape) {
        return shape.stretches().stream()
                .filter(stretch -> stretch.part() == place.part()
                        && stretch.tray().tray().name().equals(place.tray()))
                .toList();
    }
}
