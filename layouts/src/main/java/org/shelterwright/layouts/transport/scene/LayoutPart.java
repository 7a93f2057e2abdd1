package org.shelterwright.layouts.transport.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.carrier.Coupling;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.catalog.transit.Underside;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.Trailer;
import org.shelterwright.layouts.brief.TrailerLoad;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Influence;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.Mode;
import org.shelterwright.layouts.state.Quantity;
import org.shelterwright.layouts.state.VehicleLoads;
import org.shelterwright.layouts.transport.Piece;

/**
 * A part of a layout as it travels: units stowed as on the road, tanks full, nobody aboard, the trailer uncoupled. Masses are those
 * of the mass statement, with growth.
 */
final class LayoutPart {
    private final Piece piece;
    private final Layout layout;
    private final Scene scene;
    private final LoadStates states;

    LayoutPart(Piece piece, Layout layout, List<RuleSet> ruleSets) {
        Brief brief = layout.brief().withCrew(0).withOccupants(List.of());
        this.piece = piece;
        this.layout = layout;
        this.scene = Scene.of(layout.withAsked(brief, layout.parts()), Rules.of(brief, ruleSets));
        this.states = LoadStates.of(scene);
    }

    private record Sums(Quantity mass, Quantity x, Quantity y, Quantity z, Mode mode) {}

    Shape vehicle() {
        Carrier carrier = scene.carrier().orElseThrow(() -> lacks("carrier"));
        VehicleLoads loads = VehicleLoads.carrier(scene).orElseThrow();
        List<Box> solids = new ArrayList<>(carrier.outline());
        Box outside = scene.body().outside().moved(carrier.bodyAt());
        solids.add(outside);
        List<Provision> eyes = new ArrayList<>(carrier.provisions());
        for (Provision eye : scene.body().provisions()) {
            eyes.add(new Provision("body " + eye.name(), eye.use(), eye.at().plus(carrier.bodyAt()), eye.ratingN()));
        }
        Mode mode = new Mode(Situation.ON_THE_ROAD, false);
        return shape(
                solids,
                eyes,
                wheels(loads, carrier, mode),
                new Sums(loads.ownMass(), loads.lengthMoment(), loads.sideMoment(), loads.heightMoment(), mode),
                Underside.TYRES);
    }

    Shape trailer() {
        Carrier trailer = scene.trailer().orElseThrow(() -> lacks("trailer"));
        VehicleLoads loads = VehicleLoads.trailer(scene).orElseThrow();
        List<Box> solids = new ArrayList<>(trailer.outline());
        Trailer asked = scene.brief().trailer();
        for (TrailerLoad load : asked == null ? List.<TrailerLoad>of() : asked.loads()) {
            Item item = layout.item(load.unit());
            solids.add(load.pose().outline(item.size()));
        }
        Mode mode = new Mode(Situation.ON_THE_ROAD, true);
        return shape(
                solids,
                trailer.provisions(),
                wheels(loads, trailer, mode),
                new Sums(loads.ownMass(), loads.lengthMoment(), loads.sideMoment(), loads.heightMoment(), mode),
                Underside.TYRES);
    }

    Shape body() {
        Sums sums = new Sums(
                Quantity.ofBody(Influence.MASS),
                Quantity.ofBody(Influence.MOMENT_X),
                Quantity.ofBody(Influence.MOMENT_Y),
                Quantity.ofBody(Influence.MOMENT_Z),
                new Mode(Situation.ON_THE_ROAD, false));
        return shape(
                List.of(scene.body().outside()), scene.body().provisions(), List.of(), sums, Underside.PAINTED_METAL);
    }

    private Shape shape(List<Box> solids, List<Provision> eyes, List<Wheel> wheels, Sums sums, Underside underside) {
        Box hull = Shapes.hull(solids);
        boolean wheeled = underside == Underside.TYRES;
        Point low = new Point(hull.x0(), hull.y0(), wheeled ? 0 : hull.z0());
        Point back = new Point(-low.x(), -low.y(), -low.z());
        List<String> missing = new ArrayList<>();
        states.gaps(sums.mass(), sums.x(), sums.y(), sums.z()).forEach(gap -> missing.add(gap.sentence()));
        boolean massKnown = states.gaps(sums.mass()).isEmpty();
        double massKg = states.nominal(sums.mass(), sums.mode(), true);
        Point centre = missing.isEmpty() && massKg > 0
                ? new Point(part(sums.x(), sums, massKg), part(sums.y(), sums, massKg), part(sums.z(), sums, massKg))
                        .plus(back)
                : null;
        List<Wheel> placed = wheels.stream()
                .map(one -> new Wheel(
                        one.name(), one.x() + back.x(), one.y() + back.y(), one.track(), one.leftKg(), one.rightKg()))
                .toList();
        Box size = new Box(0, 0, 0, hull.x1() - low.x(), hull.y1() - low.y(), hull.z1() - low.z());
        return new Shape(
                piece.id(),
                piece.name(),
                new Size(size.x1(), size.y1(), size.z1()),
                solids.stream().map(box -> box.moved(back)).toList(),
                placed,
                placed.isEmpty() ? new Rect(0, 0, size.x1(), size.y1()) : foot(placed),
                eyes.stream()
                        .map(eye ->
                                new Provision(eye.name(), eye.use(), eye.at().plus(back), eye.ratingN()))
                        .toList(),
                massKnown ? Double.valueOf(massKg) : null,
                massKnown ? states.uncertaintyKg(sums.mass(), sums.mode()) : 0,
                centre,
                underside,
                layout,
                null,
                missing);
    }

    private int part(Quantity moment, Sums sums, double massKg) {
        return Shapes.whole(states.nominal(moment, sums.mode(), true) / massKg * Lengths.M);
    }

    /** Around all wheels; a support is a corner of it. */
    private static Rect foot(List<Wheel> wheels) {
        int x0 = wheels.stream().mapToInt(Wheel::x).min().orElseThrow();
        int x1 = wheels.stream().mapToInt(Wheel::x).max().orElseThrow();
        int y0 =
                wheels.stream().mapToInt(one -> one.y() - one.track() / 2).min().orElseThrow();
        int y1 =
                wheels.stream().mapToInt(one -> one.y() + one.track() / 2).max().orElseThrow();
        return new Rect(x0, y0, x1, y1);
    }

    private List<Wheel> wheels(VehicleLoads loads, Carrier carrier, Mode mode) {
        List<Wheel> wheels = new ArrayList<>();
        boolean known = loads.whyNoAxleLoads().isEmpty();
        for (int i = carrier.axles().size() - 1; i >= 0; i--) {
            Axle axle = carrier.axles().get(i);
            double left = known ? states.nominal(loads.wheelLoad(i, true), mode, true) : 0;
            double right = known ? states.nominal(loads.wheelLoad(i, false), mode, true) : 0;
            wheels.add(new Wheel(axle.name(), axle.x(), 0, axle.track(), left, right));
        }
        support(loads, carrier, mode).ifPresent(wheels::add);
        return wheels;
    }

    /** A centre-axle trailer that is uncoupled stands on its support near the coupling. */
    private Optional<Wheel> support(VehicleLoads loads, Carrier carrier, Mode mode) {
        Coupling coupling = carrier.coupling();
        if (!loads.isTrailer() || coupling == null || carrier.kind() != Carrier.Kind.CENTRE_AXLE_TRAILER) {
            return Optional.empty();
        }
        double kg = Math.max(0, states.nominal(loads.couplingLoad(), mode, true));
        return Optional.of(new Wheel("support", coupling.at().x(), coupling.at().y(), 0, kg / 2, kg / 2));
    }

    private IllegalArgumentException lacks(@Nullable String what) {
        return new IllegalArgumentException("The piece \"" + piece.id() + "\" is the "
                + (piece.part() == null ? "part" : piece.part().name().toLowerCase(Locale.ROOT)) + " of layout \""
                + piece.layout() + "\", which has no " + what + ".");
    }
}
