package org.shelterwright.layouts.study.results;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.statement.MassStatement;
import org.shelterwright.layouts.statement.StateTotal;
import org.shelterwright.layouts.statement.StateTotal.AxleTotal;
import org.shelterwright.layouts.transport.scene.JourneyScene;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/**
 * Figures of one layout. What is not known is {@code null}.
 *
 * @param massKg filled body on the road with full tanks, growth included (kg)
 * @param grossKg carrier with it, crew and full tanks (kg)
 * @param xMm centre of mass of the filled body from the datum (mm)
 * @param axleReserveKg least that is left of the rating of an axle in any load state (kg), below zero if it is overstepped
 * @param cableM length of all cables to cut (m), with spare; {@code null} if a wire has no length yet, or there are no wires
 * @param freeM3 room inside that nothing fills (m³)
 * @param cars of a journey, cars that carry something
 * @param carsLengthM of a journey, their length over all, or else that of their decks (m)
 * @param left of a journey, pieces that stand on no car on a leg on which they do not drive
 */
public record RunMeasures(
        @Nullable Double massKg,
        @Nullable Double grossKg,
        @Nullable Double xMm,
        @Nullable Double yMm,
        @Nullable Double zMm,
        @Nullable Double axleReserveKg,
        @Nullable Double cableM,
        @Nullable Double freeM3,
        @Nullable Double cars,
        @Nullable Double carsLengthM,
        @Nullable Double left) {
    public static final RunMeasures NONE =
            new RunMeasures(null, null, null, null, null, null, null, null, null, null, null);

    /** Takes the figures of a scene. Cost: linear in its units, and quadratic in its solids for the room left. */
    public static RunMeasures of(Scene scene) {
        MassStatement statement = MassStatement.of(scene);
        Optional<StateTotal> body = statement.filledBody(Situation.ON_THE_ROAD);
        return new RunMeasures(
                body.map(StateTotal::massKg).orElse(null),
                gross(scene, statement),
                body.map(StateTotal::xMm).orElse(null),
                body.map(StateTotal::yMm).orElse(null),
                body.map(StateTotal::zMm).orElse(null),
                axleReserve(statement),
                cable(scene),
                FreeRoom.ofScene(scene),
                null,
                null,
                null);
    }

    /** Takes the figures of a journey: mass of what stands on cars, and gross mass with the cars that carry it. */
    public static RunMeasures of(JourneyScene scene) {
        List<PlacedLoad> used = scene.journey().loads().stream()
                .flatMap(load -> scene.load(load.id()).stream())
                .filter(load -> !load.pieces().isEmpty())
                .toList();
        double massKg = used.stream().mapToDouble(PlacedLoad::massKg).sum();
        double tareKg = used.stream().mapToDouble(load -> load.car().tareKg()).sum();
        double length = used.stream().mapToDouble(load -> lengthM(load.car())).sum();
        long left =
                scene.legs().stream().mapToLong(leg -> left(scene, leg)).max().orElse(0);
        return new RunMeasures(
                massKg, massKg + tareKg, null, null, null, null, null, null, (double) used.size(), length, (double)
                        left);
    }

    private static double lengthM(TransitCar car) {
        Integer over = car.lengthOver();
        return Lengths.metres(over == null ? car.deck().length() : over);
    }

    /** Pieces without a place on a leg. */
    private static long left(JourneyScene scene, LegScene leg) {
        Set<String> there = new HashSet<>();
        leg.drives().forEach(driven -> {
            there.add(driven.vehicle().id());
            driven.trailer().ifPresent(trailer -> there.add(trailer.id()));
        });
        leg.loads().forEach(load -> load.pieces().forEach(piece -> there.add(piece.id())));
        return scene.journey().pieces().stream()
                .filter(piece -> !there.contains(piece.id()))
                .count();
    }

    private static @Nullable Double gross(Scene scene, MassStatement statement) {
        return scene.carrier()
                .flatMap(carrier -> statement.states().stream()
                        .filter(total -> total.what().equals(carrier.name()))
                        .map(StateTotal::massKg)
                        .filter(Objects::nonNull)
                        .max(Comparator.naturalOrder()))
                .orElse(null);
    }

    private static @Nullable Double cable(Scene scene) {
        List<LaidWire> wires = CableNet.of(scene).wires();
        return wires.isEmpty() || wires.stream().anyMatch(wire -> wire.cutLength() < 0)
                ? null
                : Double.valueOf(wires.stream().mapToLong(LaidWire::cutLength).sum() * 1e-6);
    }

    private static @Nullable Double axleReserve(MassStatement statement) {
        Stream<@Nullable Double> reserves = statement.states().stream()
                .flatMap(total -> total.axles().stream())
                .map(AxleTotal::reserveKg);
        return reserves.filter(Objects::nonNull)
                .map(Objects::requireNonNull)
                .min(Comparator.naturalOrder())
                .orElse(null);
    }
}
