package org.shelterwright.layouts.state;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.carrier.Carrier.Kind;
import org.shelterwright.catalog.carrier.Coupling;
import org.shelterwright.catalog.space.Lengths;

/**
 * How a mass on a carrier spreads over its axles. Axles of a group share equally, at the mean of their places.
 *
 * <ul>
 *   <li>Two groups: a simply supported beam. Share of the front group at x: (x − xr) / (xf − xr).
 *   <li>A centre-axle trailer: a beam on its coupling and its one group.
 *   <li>Three groups or more: a rigid beam on springs, one alike for each axle. With n axles in a group, N in all, their
 *       mean place X and S = Σ n (xg − X)²: share = n (1/N + (xg − X)(x − X)/S). It holds while no group lifts off.
 * </ul>
 *
 * @param shares what 1 kg at a place adds to each axle; empty if no model holds
 * @param coupling what it adds to the coupling
 * @param groups number of axle groups
 * @param why why no model holds; {@code null} if one does
 */
public record AxleStatics(
        List<Influence> shares,
        Influence coupling,
        int groups,
        @Nullable String why) {
    public AxleStatics {
        shares = List.copyOf(shares);
    }

    private record Group(int axles, double x) {}

    public static AxleStatics of(Carrier carrier) {
        Map<Integer, Group> groups = groups(carrier);
        List<Group> list = List.copyOf(groups.values());
        Coupling coupling = carrier.coupling();
        if (carrier.kind() == Kind.CENTRE_AXLE_TRAILER) {
            if (coupling == null || list.size() != 1) {
                return none(
                        list.size(),
                        coupling == null
                                ? "the trailer " + carrier.name() + " has no coupling. Give it in carrier "
                                        + carrier.id()
                                : "the trailer " + carrier.name() + " has " + list.size()
                                        + " axle groups and a coupling that bears, which statics alone cannot solve");
            }
            double at = Lengths.metres(coupling.at().x());
            double axle = list.get(0).x();
            double span = at - axle;
            Influence share = Influence.along(at / span, -1 / span)
                    .times(1.0 / carrier.axles().size());
            return new AxleStatics(
                    carrier.axles().stream().map(one -> share).toList(),
                    Influence.along(-axle / span, 1 / span),
                    1,
                    null);
        }
        if (list.size() < 2) {
            return none(1, carrier.name() + " stands on a single axle group, which does not hold it up alone");
        }
        Map<Integer, Influence> shares = list.size() == 2 ? beam(groups) : springs(groups);
        List<Influence> ofAxles = new ArrayList<>();
        for (Axle axle : carrier.axles()) {
            ofAxles.add(shares.getOrDefault(axle.group(), Influence.NONE));
        }
        return new AxleStatics(ofAxles, Influence.NONE, list.size(), null);
    }

    private static AxleStatics none(int groups, String why) {
        return new AxleStatics(List.of(), Influence.NONE, groups, why);
    }

    private static Map<Integer, Group> groups(Carrier carrier) {
        Map<Integer, Group> groups = new LinkedHashMap<>();
        for (Axle axle : carrier.axles()) {
            Group before = groups.getOrDefault(axle.group(), new Group(0, 0));
            int count = before.axles() + 1;
            double x = (before.x() * before.axles() + Lengths.metres(axle.x())) / count;
            groups.put(axle.group(), new Group(count, x));
        }
        return groups;
    }

    private static Map<Integer, Influence> beam(Map<Integer, Group> groups) {
        Map<Integer, Influence> shares = new LinkedHashMap<>();
        groups.forEach((number, group) -> groups.forEach((otherNumber, other) -> {
            if (!number.equals(otherNumber)) {
                double span = group.x() - other.x();
                shares.put(number, Influence.along(-other.x() / span, 1 / span).times(1.0 / group.axles()));
            }
        }));
        return shares;
    }

    private static Map<Integer, Influence> springs(Map<Integer, Group> groups) {
        int axles = groups.values().stream().mapToInt(Group::axles).sum();
        double mean = groups.values().stream()
                        .mapToDouble(group -> group.axles() * group.x())
                        .sum()
                / axles;
        double spread = groups.values().stream()
                .mapToDouble(group -> group.axles() * (group.x() - mean) * (group.x() - mean))
                .sum();
        Map<Integer, Influence> shares = new LinkedHashMap<>();
        groups.forEach((number, group) -> {
            double perX = (group.x() - mean) / spread;
            shares.put(number, Influence.along(1.0 / axles - perX * mean, perX));
        });
        return shares;
    }
}
