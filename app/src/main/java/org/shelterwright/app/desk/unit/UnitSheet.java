package org.shelterwright.app.desk.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.shelterwright.app.desk.hand.Clearance;
import org.shelterwright.app.desk.hand.LengthText;
import org.shelterwright.app.desk.hand.LengthUnit;
import org.shelterwright.app.desk.hand.Moving;
import org.shelterwright.app.desk.hand.Neighbours;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.edit.PutUnits;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** What is shown of the selected units and what can be typed; without controls. Every change is one step. */
final class UnitSheet {
    private static final int LEAST_STEP = 10;
    private static final int MOST_STEP = Lengths.M;

    private final Session session;
    private final ObjectProperty<LengthUnit> unit = new SimpleObjectProperty<>(LengthUnit.MILLIMETRE);

    UnitSheet(Session session) {
        this.session = session;
    }

    /** The unit of lengths. */
    ObjectProperty<LengthUnit> unit() {
        return unit;
    }

    /** The selected units that are placed, in the order of choosing. */
    List<PlacedUnit> units() {
        Scene scene = session.now().scene();
        return session.selection().units().get().stream()
                .flatMap(id -> scene.unit(id).stream())
                .toList();
    }

    Situation situation() {
        return session.situation().get();
    }

    /** The coordinate that all of them have; empty if they differ. */
    OptionalInt common(Axis axis) {
        int[] values = units().stream()
                .mapToInt(one -> one.pose(situation()).at().along(axis))
                .distinct()
                .toArray();
        return values.length == 1 ? OptionalInt.of(values[0]) : OptionalInt.empty();
    }

    /** The turn that all of them have. */
    Optional<QuarterTurn> turn() {
        return common(one -> one.pose(situation()).yaw());
    }

    /** What all of them are mounted on. */
    Optional<MountChoice> mount() {
        return common(one -> MountChoice.of(session.now().scene(), one, situation()));
    }

    /** What they can be mounted on. */
    List<MountChoice> mounts() {
        return units().isEmpty() ? List.of() : MountChoice.all(session.now().scene(), units().get(0), situation());
    }

    /** The nearest neighbours along the surface, of a single unit. */
    List<Clearance> distances() {
        return units().size() != 1 ? List.of() : Neighbours.of(session.now().scene(), units().get(0), situation());
    }

    /** Sets a coordinate; gives a sentence if that makes no sense. */
    Optional<String> setPlace(Axis axis, String text) {
        return tried(() -> {
            int value = LengthText.parse(text, unit.get());
            put("Set " + axis.name().toLowerCase(Locale.ROOT) + " of", one -> {
                Place place = one.place(situation());
                Pose pose = place.pose();
                return place.with(new Pose(pose.at().with(axis, value), pose.yaw()));
            });
        });
    }

    /** Sets the distance to a neighbour. */
    Optional<String> setDistance(Clearance clearance, String text) {
        return tried(() -> {
            int shift = clearance.length() - LengthText.parse(text, unit.get());
            boolean high = clearance.high();
            put("Set distance of", one -> {
                Place place = one.place(situation());
                Point way = Point.ORIGIN.with(clearance.axis(), high ? shift : -shift);
                return place.with(place.pose().moved(way));
            });
        });
    }

    /** Turns each of them about its own low corner to a turn. */
    Optional<String> setTurn(QuarterTurn turn) {
        return tried(() -> put("Turn", one -> {
            Place place = one.place(situation());
            return place.with(new Pose(place.pose().at(), turn));
        }));
    }

    /** Sets the step of the arrow keys. */
    Optional<String> setStep(IntegerProperty step, String text) {
        return tried(() -> {
            int length = LengthText.parse(text, unit.get());
            if (length < LEAST_STEP || length > MOST_STEP) {
                throw new IllegalArgumentException("A step lies between 0.01 mm and 1 m.");
            }
            step.set(length);
        });
    }

    /** Mounts them elsewhere. */
    Optional<String> setMount(MountChoice choice) {
        Scene scene = session.now().scene();
        return tried(() -> put(
                "Mount " + choice.words() + ":", one -> choice.place(scene, one, Moving.changed(one, situation()))));
    }

    private void put(String order, Function<PlacedUnit, Place> places) {
        List<Placement> changed = new ArrayList<>();
        for (PlacedUnit one : units()) {
            changed.add(one.placement().with(Moving.changed(one, situation()), places.apply(one)));
        }
        session.apply(new PutUnits(order + " " + words(), changed));
    }

    private String words() {
        return units().size() == 1 ? units().get(0).name() : units().size() + " units";
    }

    private <T> Optional<T> common(Function<PlacedUnit, T> of) {
        Set<T> values = units().stream().map(of).collect(Collectors.toSet());
        return values.size() == 1 ? Optional.of(values.iterator().next()) : Optional.empty();
    }

    private static Optional<String> tried(Runnable change) {
        try {
            change.run();
            return Optional.empty();
        } catch (IllegalArgumentException refused) {
            return Optional.of(String.valueOf(refused.getMessage()));
        }
    }
}
