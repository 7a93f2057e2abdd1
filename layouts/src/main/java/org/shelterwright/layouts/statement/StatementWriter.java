package org.shelterwright.layouts.statement;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.carrier.Seat;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.brief.Trailer;
import org.shelterwright.layouts.brief.TrailerLoad;
import org.shelterwright.layouts.cable.CableMass;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.MassModel;
import org.shelterwright.layouts.state.OccupiedSeat;
import org.shelterwright.layouts.statement.MassLine.When;
import org.shelterwright.layouts.statement.MassStatement.GroupTotal;

/** Writes the lines of a mass statement. */
final class StatementWriter {
    private final Scene scene;
    private final MassModel model;

    StatementWriter(Scene scene) {
        this.scene = scene;
        this.model = new MassModel(scene.rules());
    }

    MassStatement write() {
        List<MassLine> lines = new ArrayList<>();
        MassData tare = scene.body().tare();
        lines.add(line("body", "body, empty", scene.body().name(), null, tare, tare.centre(), When.ALWAYS));
        scene.units().forEach(unit -> unit(lines, unit));
        for (CableMass mass : CableMass.of(scene)) {
            lines.add(line(
                    "cables",
                    mass.name(),
                    mass.wires() + (mass.wires() == 1 ? " wire" : " wires"),
                    null,
                    mass.data(),
                    mass.data().centre(),
                    When.ALWAYS));
        }
        OccupiedSeat.of(scene).forEach(seat -> occupant(lines, seat));
        scene.carrier().ifPresent(carrier -> carrier(lines, carrier, "carrier", carrier.bodyAt()));
        scene.carrier().ifPresent(carrier -> crew(lines, carrier));
        List<MassLine> trailer = new ArrayList<>();
        scene.trailer().ifPresent(carrier -> carrier(trailer, carrier, "trailer", Point.ORIGIN));
        Trailer asked = scene.brief().trailer();
        if (asked != null) {
            asked.loads().forEach(load -> load(trailer, load));
        }
        List<MassLine> all = new ArrayList<>(lines);
        all.addAll(trailer);
        return new MassStatement(
                lines,
                trailer,
                groups(all),
                new StateTotals(scene).list(),
                LoadStates.of(scene).gaps());
    }

    private void unit(List<MassLine> lines, PlacedUnit unit) {
        Pose road = unit.pose(Situation.ON_THE_ROAD);
        Pose station = unit.pose(Situation.ON_STATION);
        if (road.equals(station)) {
            unit(lines, unit, road, When.ALWAYS);
        } else {
            unit(lines, unit, road, When.ON_THE_ROAD);
            unit(lines, unit, station, When.ON_STATION);
        }
    }

    private void unit(List<MassLine> lines, PlacedUnit unit, Pose pose, When when) {
        Item item = unit.item();
        new ContentLines(scene, this::line).add(lines, unit, pose, when);
        if (when != When.ON_STATION) {
            tanks(lines, unit.spec().group(), unit.name(), unit.id(), item, pose);
        }
    }

    private void load(List<MassLine> lines, TrailerLoad load) {
        Item item = scene.layout().item(load.unit());
        String group = load.unit().group();
        lines.add(line(
                group,
                item.name(),
                load.unit().name(),
                load.unit().id(),
                item.mass(),
                centre(item, load.pose()),
                When.ALWAYS));
        tanks(lines, group, load.unit().name(), load.unit().id(), item, load.pose());
    }

    private static void carrier(List<MassLine> lines, Carrier carrier, String group, Point datum) {
        Integer height = carrier.tareCentreHeight();
        for (Axle axle : carrier.axles()) {
            Point arm = height == null ? null : new Point(axle.x(), 0, height).minus(datum);
            lines.add(new MassLine(
                    group,
                    "empty, on " + axle.name(),
                    carrier.name(),
                    null,
                    1,
                    axle.tareKg(),
                    'W',
                    0.0,
                    axle.tareKg(),
                    0.0,
                    arm,
                    When.ALWAYS));
        }
        for (Tank tank : carrier.tanks()) {
            tank(lines, group, carrier.name(), null, tank, tank.centre().minus(datum));
        }
    }

    private static void occupant(List<MassLine> lines, OccupiedSeat seat) {
        When when = seat.situation() == Situation.ON_STATION ? When.AT_WORK : When.RIDING;
        boolean known = seat.missing() == null;
        Double kg = known ? Double.valueOf(seat.massKg()) : null;
        lines.add(new MassLine(
                seat.unit().spec().group(),
                "person",
                seat.unit().name(),
                seat.unit().id(),
                1,
                kg,
                'L',
                0.0,
                kg,
                0.0,
                known ? seat.at() : null,
                when));
    }

    private void crew(List<MassLine> lines, Carrier carrier) {
        OptionalDouble person = scene.rules().value(Figure.PERSON_MASS);
        Double kg = person.isPresent() ? Double.valueOf(person.getAsDouble()) : null;
        List<Seat> seats = carrier.seatsTaken(scene.brief().crew());
        for (Seat seat : seats) {
            lines.add(new MassLine(
                    "carrier",
                    "person",
                    seat.name(),
                    null,
                    1,
                    kg,
                    'L',
                    0.0,
                    kg,
                    0.0,
                    seat.at().minus(carrier.bodyAt()),
                    When.CREW_ABOARD));
        }
    }

    private static void tanks(
            List<MassLine> lines, String group, String label, @Nullable String id, Item item, Pose pose) {
        for (Tank tank : item.tanks()) {
            tank(lines, group, label, id, tank, pose.apply(tank.centre(), item.size()));
        }
    }

    private static void tank(
            List<MassLine> lines, String group, String label, @Nullable String id, Tank tank, Point arm) {
        lines.add(content(group, label, id, tank.name(), tank.leastKg(), arm, When.TANKS_LOW));
        lines.add(content(group, label, id, tank.name(), tank.fullKg(), arm, When.TANKS_FULL));
    }

    private static MassLine content(
            String group, String label, @Nullable String id, String tank, double kg, Point arm, When when) {
        return new MassLine(group, tank, label, id, 1, kg, 'L', 0.0, kg, 0.0, arm, when);
    }

    private MassLine line(
            String group,
            String item,
            String label,
            @Nullable String id,
            MassData data,
            @Nullable Point arm,
            When when) {
        return new MassLine(
                group,
                item,
                label,
                id,
                1,
                data.massKg(),
                data.basis().letter(),
                boxed(model.growthShare(data)),
                boxed(model.grownKg(data)),
                boxed(model.uncertaintyKg(data)),
                arm,
                when);
    }

    private static @Nullable Double boxed(OptionalDouble value) {
        return value.isPresent() ? Double.valueOf(value.getAsDouble()) : null;
    }

    private static @Nullable Point centre(Item item, Pose pose) {
        Point centre = item.mass().centre();
        return centre == null ? null : pose.apply(centre, item.size());
    }

    private static List<GroupTotal> groups(List<MassLine> lines) {
        Map<String, GroupTotal> groups = new LinkedHashMap<>();
        for (MassLine line : lines) {
            if (line.when() != When.ON_STATION && line.when() != When.AT_WORK && line.when() != When.TANKS_LOW) {
                GroupTotal before = groups.getOrDefault(line.group(), new GroupTotal(line.group(), 0, 0, 0, 0));
                groups.put(
                        line.group(),
                        new GroupTotal(
                                line.group(),
                                before.massKg() + zero(line.massKg()),
                                before.momentXKgM() + zero(line.momentXKgM()),
                                before.momentYKgM() + zero(line.momentYKgM()),
                                before.momentZKgM() + zero(line.momentZKgM())));
            }
        }
        return List.copyOf(groups.values());
    }

    private static double zero(@Nullable Double value) {
        return value == null ? 0 : value;
    }
}
