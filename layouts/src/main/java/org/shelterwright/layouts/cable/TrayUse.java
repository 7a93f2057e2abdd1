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

    /** What a wire takes of a place. */
    private record User(String wire, double areaMm2, List<Stretch> stretches) {
        boolean there(int from, int to) {
            for (Stretch stretch : stretches) {
                if (stretch.from() <= from && to <= stretch.to()) {
                    return true;
                }
            }
            return false;
        }
    }

    /** All sections in which something lies, tray by tray in the order of first use, each from its beginning on. */
    static List<TrayUse> of(List<RouteShape> shapes, Map<String, Cable> cables) {
        Map<Place, List<User>> users = new LinkedHashMap<>();
        for (RouteShape shape : shapes) {
            Cable cable = cables.get(shape.route().cable());
            double areaMm2 = cable == null ? 0 : cable.areaMm2();
            for (Stretch stretch : shape.stretches()) {
                Place place = new Place(stretch.tray().tray().name(), stretch.part());
                List<User> list = users.computeIfAbsent(place, key -> new ArrayList<>());
                String wire = shape.route().wire();
                if (list.isEmpty() || !list.get(list.size() - 1).wire().equals(wire)) {
                    list.add(new User(wire, areaMm2, new ArrayList<>()));
                }
                list.get(list.size() - 1).stretches().add(stretch);
            }
        }
        List<TrayUse> uses = new ArrayList<>();
        users.forEach((place, list) -> sections(place, list, uses));
        return uses;
    }

    private static void sections(Place place, List<User> users, List<TrayUse> uses) {
        TrayPath tray = users.get(0).stretches().get(0).tray();
        TreeSet<Integer> cuts = new TreeSet<>();
        users.forEach(user -> user.stretches().forEach(stretch -> {
            cuts.add(stretch.from());
            cuts.add(stretch.to());
        }));
        Integer from = null;
        for (int to : cuts) {
            if (from != null) {
                List<String> wires = new ArrayList<>();
                double areaMm2 = 0;
                for (User user : users) {
                    if (user.there(from, to)) {
                        wires.add(user.wire());
                        areaMm2 += user.areaMm2();
                    }
                }
                if (!wires.isEmpty()) {
                    double insideMm2 = tray.tray().areaMm2(place.part());
                    uses.add(new TrayUse(tray, place.part(), from, to, wires, areaMm2, insideMm2));
                }
            }
            from = to;
        }
    }
}
