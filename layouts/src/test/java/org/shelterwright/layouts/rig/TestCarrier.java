package org.shelterwright.layouts.rig;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.carrier.Carrier.Kind;
import org.shelterwright.catalog.carrier.Coupling;
import org.shelterwright.catalog.carrier.Seat;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.space.Point;

/** Builds carriers for tests. The first axle is steered and single, the others are driven. */
public final class TestCarrier {
    private final Kind kind;
    private Point bodyAt = Point.ORIGIN;
    private final List<Axle> axles = new ArrayList<>();
    private final List<Tank> tanks = new ArrayList<>();
    private final List<Seat> seats = new ArrayList<>();
    private @Nullable Integer height = 1_000_000;
    private @Nullable Double grossKg;
    private @Nullable Double combinationKg;
    private @Nullable Coupling coupling;
    private int length = 7_000_000;
    private int width = 2_500_000;

    private TestCarrier(Kind kind) {
        this.kind = kind;
    }

    public static TestCarrier of(Kind kind) {
        return new TestCarrier(kind);
    }

    /** A two-axle truck: 4 m wheelbase, 3 t + 2 t empty, the rear wall of the body 1 m behind the rear axle. */
    public static TestCarrier truck() {
        return of(Kind.TRUCK)
                .bodyAt(-5000, -1000, 1200)
                .axle(0, 2000, 3000, 6000.0, 1)
                .axle(-4000, 2000, 2000, 9000.0, 2)
                .gross(14_000);
    }

    /** A centre-axle trailer: one axle, coupling 3 m before it, 500 kg empty. */
    public static TestCarrier centreAxleTrailer() {
        return of(Kind.CENTRE_AXLE_TRAILER)
                .axle(0, 1800, 500, 2000.0, 1)
                .coupling(3000, 500, 100.0, null, null)
                .gross(2000);
    }

    public TestCarrier bodyAt(int x, int y, int z) {
        bodyAt = Point.ofMm(x, y, z);
        return this;
    }

    public TestCarrier axle(int x, int track, double tareKg, @Nullable Double ratingKg, int group) {
        return axle(x, track, tareKg, ratingKg, axles.isEmpty(), !axles.isEmpty(), false, group);
    }

    public TestCarrier axle(
            int x,
            int track,
            double tareKg,
            @Nullable Double ratingKg,
            boolean steered,
            boolean driven,
            boolean twinAndAir,
            int group) {
        axles.add(new Axle(
                "axle " + (axles.size() + 1),
                x * 1000,
                track * 1000,
                tareKg,
                ratingKg,
                null,
                steered,
                driven && kind == Kind.TRUCK,
                twinAndAir,
                twinAndAir,
                group));
        return this;
    }

    public TestCarrier tank(String name, int x, int y, int z, double leastKg, double fullKg) {
        tanks.add(new Tank(name, Point.ofMm(x, y, z), leastKg, fullKg));
        return this;
    }

    public TestCarrier seat(int x, int y, int z) {
        seats.add(new Seat("seat " + seats.size(), Point.ofMm(x, y, z), seats.isEmpty()));
        return this;
    }

    public TestCarrier height(@Nullable Integer mm) {
        height = mm == null ? null : mm * 1000;
        return this;
    }

    public TestCarrier gross(double kg) {
        grossKg = kg;
        return this;
    }

    public TestCarrier combination(double kg) {
        combinationKg = kg;
        return this;
    }

    public TestCarrier size(int lengthMm, int widthMm) {
        length = lengthMm * 1000;
        width = widthMm * 1000;
        return this;
    }

    public TestCarrier coupling(
            int x, int z, @Nullable Double verticalKg, @Nullable Double leastKg, @Nullable Double drawnKg) {
        coupling = new Coupling(Point.ofMm(x, 0, z), verticalKg, leastKg, drawnKg);
        return this;
    }

    public Carrier build() {
        String name = kind == Kind.TRUCK ? "Truck" : "Trailer";
        return new Carrier(
                name.toLowerCase(),
                name,
                kind,
                bodyAt,
                length,
                width,
                axles,
                height,
                grossKg,
                combinationKg,
                coupling,
                tanks,
                seats,
                List.of(),
                List.of(),
                null);
    }
}
