package org.shelterwright.layouts.transport.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.transit.FrictionTable;
import org.shelterwright.catalog.transit.LineCategories;
import org.shelterwright.catalog.transit.Outline;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.transport.Crate;
import org.shelterwright.layouts.transport.Leg;

/** One leg of a resolved journey, with the rules that apply on it. */
public final class LegScene {
    private final JourneyScene journey;
    private final Leg leg;
    private final int number;
    private final Rules rules;

    LegScene(JourneyScene journey, Leg leg, int number, Rules rules) {
        this.journey = journey;
        this.leg = leg;
        this.number = number;
        this.rules = rules;
    }

    public JourneyScene journey() {
        return journey;
    }

    public Leg leg() {
        return leg;
    }

    /** From 1. */
    public int number() {
        return number;
    }

    public Rules rules() {
        return rules;
    }

    /** What rows call it, such as "leg 2, rail". */
    public String state() {
        return "leg " + number + ", " + leg.mode().word();
    }

    /** The loads that go, in the order of the leg, each followed by those that stand on it. */
    public List<PlacedLoad> loads() {
        List<PlacedLoad> found = new ArrayList<>();
        leg.loads().forEach(id -> journey.load(id).ifPresent(load -> add(load, found)));
        return found;
    }

    private void add(PlacedLoad load, List<PlacedLoad> found) {
        if (!found.contains(load)) {
            found.add(load);
            load.pieces().forEach(piece -> journey.load(piece.id()).ifPresent(inner -> add(inner, found)));
        }
    }

    /** The loads that go on this leg's own ways: not those inside others. */
    public List<PlacedLoad> outerLoads() {
        return leg.loads().stream().flatMap(id -> journey.load(id).stream()).toList();
    }

    /** A vehicle on its own wheels, with its trailer if it draws one. */
    public record Driven(Shape vehicle, Optional<Shape> trailer) {}

    public List<Driven> drives() {
        List<Driven> found = new ArrayList<>();
        for (Leg.Drive drive : leg.drives()) {
            String trailer = drive.trailer();
            journey.driven(drive.vehicle())
                    .ifPresent(vehicle -> found.add(
                            new Driven(vehicle, trailer == null ? Optional.empty() : journey.shape(trailer))));
        }
        return found;
    }

    public Optional<Outline> outline() {
        String id = leg.outline();
        return id == null ? Optional.empty() : journey.parts().transit().outline(id);
    }

    public Optional<LineCategories.Category> lineCategory() {
        String name = leg.lineCategory();
        return name == null ? Optional.empty() : journey.parts().transit().lineCategory(name);
    }

    /** Friction of a piece on the floor of a car, wet if the leg is. */
    public Optional<Double> friction(Shape shape, TransitCar car) {
        return journey.parts()
                .transit()
                .friction(shape.underside(), car.deck().material())
                .map(pair -> leg.wet() ? pair.wet() : pair.dry());
    }

    /** Static friction of a shape on the top of another; empty if the top or the pair is not known. */
    public Optional<Double> friction(Shape upper, Shape lower) {
        return Optional.ofNullable(lower.crate())
                .flatMap(Crate::topMaterial)
                .flatMap(top -> journey.parts().transit().friction(upper.underside(), top))
                .map(pair -> leg.wet() ? pair.wet() : pair.dry());
    }

    /** The table that friction comes from. */
    public Optional<FrictionTable.Friction> frictionEntry(Shape shape, TransitCar car) {
        return journey.parts().transit().friction(shape.underside(), car.deck().material());
    }
}
