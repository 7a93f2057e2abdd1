package org.shelterwright.app.desk.hand.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.hand.Moving;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.edit.PutUnits;
import org.shelterwright.layouts.edit.SwapUnits;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;

/** Orders that put units in line with each other, at equal distances, or in each other's place. */
final class ArrangeOrders {
    private final Session session;

    ArrangeOrders(Session session) {
        this.session = session;
    }

    List<Command> all() {
        List<Command> all = new ArrayList<>();
        align(Face.FRONT, "fronts", all);
        align(Face.REAR, "rears", all);
        align(Face.LEFT, "left sides", all);
        align(Face.RIGHT, "right sides", all);
        all.add(centre(Axis.X, "Line up middles along the body", "Shift+X"));
        all.add(centre(Axis.Y, "Line up middles across the body", "Shift+Y"));
        all.add(spread(Axis.X, "Space evenly along the body", "Ctrl+Shift+X"));
        all.add(spread(Axis.Y, "Space evenly across the body", "Ctrl+Shift+Y"));
        all.add(Change.command(
                session, "swap", "Swap two units", List.of("exchange"), List.of("Ctrl+Shift+W"), chosen -> {
                    List<PlacedUnit> units = chosen.placed(2);
                    if (units.size() > 2) {
                        throw new IllegalArgumentException("Select just two units to swap.");
                    }
                    String name = "Swap "
                            + Wording.list(units.stream().map(PlacedUnit::name).toList());
                    return Change.of(
                            chosen,
                            name,
                            List.of(new SwapUnits(
                                    units.get(0).id(), units.get(1).id())));
                }));
        return all;
    }

    private void align(Face face, String what, List<Command> all) {
        String key = switch (face) {
            case FRONT -> "Ctrl+Up";
            case REAR -> "Ctrl+Down";
            case LEFT -> "Ctrl+Left";
            default -> "Ctrl+Right";
        };
        all.add(Change.command(
                session,
                "align-" + what.replace(' ', '-'),
                "Line up " + what,
                List.of("align", "flush"),
                List.of(key),
                chosen -> shifted(
                        chosen,
                        "Line up " + what + " of ",
                        face.axis(),
                        (unit, leader) -> face.sign() > 0
                                ? leader.high(face.axis()) - unit.high(face.axis())
                                : leader.low(face.axis()) - unit.low(face.axis()))));
    }

    private Command centre(Axis axis, String name, String key) {
        return Change.command(
                session,
                "align-middles-" + MoveOrders.letter(axis),
                name,
                List.of("align", "centre"),
                List.of(key),
                chosen -> shifted(
                        chosen,
                        name + ": ",
                        axis,
                        (unit, leader) -> Math.floorDiv(
                                leader.low(axis) + leader.high(axis) - unit.low(axis) - unit.high(axis), 2)));
    }

    private interface Way {
        int of(Box unit, Box leader);
    }

    /** Shifts all but the one chosen last. */
    private static Change shifted(Chosen chosen, String order, Axis axis, Way way) {
        List<PlacedUnit> units = chosen.placed(2);
        Situation situation = chosen.situation();
        Box leader = chosen.leader().outline(situation);
        Map<Integer, Integer> ways = new TreeMap<>();
        for (PlacedUnit unit : units) {
            ways.put(unit.index(), way.of(unit.outline(situation), leader));
        }
        return put(chosen, order + chosen.words(), axis, ways);
    }

    private Command spread(Axis axis, String name, String key) {
        return Change.command(
                session,
                "space-" + MoveOrders.letter(axis),
                name,
                List.of("distribute", "equal", "gaps"),
                List.of(key),
                chosen -> spread(chosen, name, axis));
    }

    /** The first and the last stay; what no whole micrometre divides is spread over the gaps. */
    private static Change spread(Chosen chosen, String name, Axis axis) {
        List<PlacedUnit> units = new ArrayList<>(chosen.placed(3));
        Situation situation = chosen.situation();
        units.sort(Comparator.comparingInt(unit -> unit.outline(situation).low(axis)));
        Box first = units.get(0).outline(situation);
        Box last = units.get(units.size() - 1).outline(situation);
        long room = (long) last.low(axis) - first.high(axis);
        for (PlacedUnit unit : units.subList(1, units.size() - 1)) {
            room -= unit.outline(situation).extent(axis);
        }
        Map<Integer, Integer> ways = new TreeMap<>();
        long filled = first.high(axis);
        for (int i = 1; i < units.size() - 1; i++) {
            Box box = units.get(i).outline(situation);
            long at = filled + Math.floorDiv(room * i, units.size() - 1L);
            ways.put(units.get(i).index(), (int) at - box.low(axis));
            filled += box.extent(axis);
        }
        return put(chosen, name + ": " + chosen.words(), axis, ways);
    }

    private static Change put(Chosen chosen, String name, Axis axis, Map<Integer, Integer> ways) {
        Situation situation = chosen.situation();
        List<PlacedUnit> moved = chosen.placed().stream()
                .filter(unit -> ways.getOrDefault(unit.index(), 0) != 0)
                .toList();
        for (PlacedUnit unit : moved) {
            if (unit.placement().pin().holds(axis)) {
                throw new IllegalArgumentException(
                        unit.name() + " is pinned along " + MoveOrders.letter(axis) + ". Unpin it first.");
            }
        }
        return Change.of(
                chosen,
                new PutUnits(
                        name,
                        moved.stream()
                                .map(unit -> {
                                    Place place = unit.place(situation);
                                    Point shift = Point.ORIGIN.with(axis, ways.getOrDefault(unit.index(), 0));
                                    return unit.placement()
                                            .with(
                                                    Moving.changed(unit, situation),
                                                    place.with(place.pose().moved(shift)));
                                })
                                .toList()));
    }
}
