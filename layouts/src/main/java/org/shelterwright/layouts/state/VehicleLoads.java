package org.shelterwright.layouts.state;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.carrier.Carrier.Kind;
import org.shelterwright.catalog.carrier.Coupling;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.scene.Scene;

/**
 * What stands on the wheels of one vehicle, as quantities of its masses (kg, m, frame of the vehicle). For a carrier that
 * draws a centre-axle trailer, what the trailer puts on the coupling stands on it too.
 *
 * <p>The empty vehicle loads its axles as its data say, half on each side, and has its centre in the middle plane. Each
 * axle takes up the sideways moment of just what it bears, as with a frame that is soft in torsion.
 */
public final class VehicleLoads {
    private final Holder holder;
    private final Carrier vehicle;
    private final AxleStatics statics;
    private final Influence trailerCoupling;
    private final List<Mode> modes;
    private final @Nullable String whyNotStanding;

    private VehicleLoads(Scene scene, Holder holder, Carrier vehicle) {
        this.holder = holder;
        this.vehicle = vehicle;
        this.statics = AxleStatics.of(vehicle);
        Carrier drawn = isTrailer() ? null : scene.trailer().orElse(null);
        AxleStatics ofDrawn = drawn == null ? null : AxleStatics.of(drawn);
        this.trailerCoupling = ofDrawn == null ? Influence.NONE : ofDrawn.coupling();
        this.whyNotStanding = drawn == null || ofDrawn == null || drawn.kind() != Kind.CENTRE_AXLE_TRAILER
                ? null
                : whyNotDrawing(ofDrawn);
        this.modes = LoadStates.of(scene).modes().stream()
                .filter(mode -> mode.trailer() || !isTrailer())
                .toList();
    }

    private record Kept(Optional<VehicleLoads> carrier, Optional<VehicleLoads> trailer) {
        static Kept of(Scene scene) {
            return new Kept(
                    scene.carrier().map(one -> new VehicleLoads(scene, Holder.CARRIER, one)),
                    scene.trailer().map(one -> new VehicleLoads(scene, Holder.TRAILER, one)));
        }
    }

    public static Optional<VehicleLoads> carrier(Scene scene) {
        return scene.derived(Kept.class, Kept::of).carrier();
    }

    public static Optional<VehicleLoads> trailer(Scene scene) {
        return scene.derived(Kept.class, Kept::of).trailer();
    }

    /** The carrier and the trailer, as far as there are. */
    public static List<VehicleLoads> all(Scene scene) {
        return Stream.of(carrier(scene), trailer(scene))
                .flatMap(Optional::stream)
                .toList();
    }

    public Carrier vehicle() {
        return vehicle;
    }

    public boolean isTrailer() {
        return holder == Holder.TRAILER;
    }

    public int axleGroups() {
        return statics.groups();
    }

    /** Why what stands on the vehicle cannot be told, since its trailer's part cannot; empty if it can. */
    public Optional<String> whyNotStanding() {
        return Optional.ofNullable(whyNotStanding);
    }

    /** Why axle loads cannot be told; empty if they can. */
    public Optional<String> whyNoAxleLoads() {
        return Optional.ofNullable(statics.why()).or(this::whyNotStanding);
    }

    /** The modes in which this vehicle is there: of a trailer, those with it coupled. */
    public List<Mode> modes() {
        return modes;
    }

    public List<Mode> roadModes() {
        return modes.stream().filter(Mode::onTheRoad).toList();
    }

    /** Mass that stands on it (kg): its own with all that it carries, and what a trailer puts on its coupling. */
    public Quantity mass() {
        return standing(Influence.MASS, tare(Axle::tareKg));
    }

    /** Mass of the vehicle with all that it carries, without what a trailer puts on its coupling (kg). */
    public Quantity ownMass() {
        return own(Influence.MASS, tare(Axle::tareKg));
    }

    /** Mass of the carrier of a scene and, where it is coupled, of the trailer (kg). */
    public static Optional<Quantity> combination(Scene scene) {
        return carrier(scene)
                .map(one -> trailer(scene)
                        .map(drawn -> one.ownMass().plus(drawn.ownMass()))
                        .orElse(one.ownMass()));
    }

    /** Mass on those axles that are such (kg). */
    public Quantity axleLoads(Predicate<Axle> such) {
        Quantity sum = Quantity.ofBody(Influence.NONE);
        for (int i = 0; i < vehicle.axles().size(); i++) {
            if (such.test(vehicle.axles().get(i))) {
                sum = sum.plus(axleLoad(i));
            }
        }
        return sum;
    }

    /** Mass on an axle (kg). */
    public Quantity axleLoad(int axle) {
        Axle one = vehicle.axles().get(axle);
        return standing(statics.shares().get(axle), one.tareKg());
    }

    /** Mass on the left or right wheels of an axle (kg). */
    public Quantity wheelLoad(int axle, boolean left) {
        return axleLoad(axle).times(0.5).plus(halfDifference(axle).times(left ? 1 : -1));
    }

    /** Half of what the left wheels of an axle bear more than the right ones (kg). */
    public Quantity halfDifference(int axle) {
        Influence share = statics.shares().get(axle);
        double track = Lengths.metres(vehicle.axles().get(axle).track());
        return standing(new Influence(0, 0, share.constant() / track, 0, share.perX() / track), 0);
    }

    /** Moment of the mass on its wheels about the ground plane (kg·m); needs the height of the empty vehicle's centre. */
    public Quantity heightMoment() {
        Integer height = vehicle.tareCentreHeight();
        double heightM = height == null ? 0 : Lengths.metres(height);
        return standing(Influence.MOMENT_Z, tare(Axle::tareKg) * heightM);
    }

    /** Moment of the mass on its wheels about its middle plane (kg·m), positive to the left. */
    public Quantity sideMoment() {
        return standing(Influence.MOMENT_Y, 0);
    }

    /** Moment of the mass on its wheels about its first axle (kg·m), positive forward. */
    public Quantity lengthMoment() {
        return standing(Influence.MOMENT_X, tare(axle -> axle.tareKg() * Lengths.metres(axle.x())));
    }

    /** Mass that this trailer puts on the coupling (kg); the empty one is taken to be balanced on its axles. */
    public Quantity couplingLoad() {
        return own(statics.coupling(), 0);
    }

    private Quantity own(Influence influence, double ofTare) {
        return isTrailer()
                ? new Quantity(Influence.NONE, Influence.NONE, influence, 0, ofTare)
                : new Quantity(influence.seenFrom(vehicle.bodyAt()), influence, Influence.NONE, ofTare, 0);
    }

    private Quantity standing(Influence influence, double ofTare) {
        Quantity own = own(influence, ofTare);
        Coupling coupling = vehicle.coupling();
        if (isTrailer() || coupling == null || trailerCoupling.none()) {
            return own;
        }
        Influence through = trailerCoupling.times(influence.at(coupling.at()));
        return new Quantity(own.body(), own.carrier(), through, ofTare, 0);
    }

    private @Nullable String whyNotDrawing(AxleStatics drawn) {
        return vehicle.coupling() != null
                ? drawn.why()
                : "the carrier " + vehicle.name() + " draws a trailer but has no coupling. Give it in carrier "
                        + vehicle.id();
    }

    private double tare(ToDoubleFunction<Axle> of) {
        double sum = 0;
        for (Axle axle : vehicle.axles()) {
            sum += of.applyAsDouble(axle);
        }
        return sum;
    }
}
