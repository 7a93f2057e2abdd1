package org.shelterwright.layouts.transport.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.transport.Stand;

/** A piece where it stands on a car; everything in the frame of the car. */
public final class PlacedPiece {
    private final Shape shape;
    private final Stand stand;

    public PlacedPiece(Shape shape, Stand stand) {
        this.shape = shape;
        this.stand = stand;
    }

    public Shape shape() {
        return shape;
    }

    public Stand stand() {
        return stand;
    }

    public String id() {
        return shape.id();
    }

    public String name() {
        return shape.name();
    }

    public Pose pose() {
        return stand.pose();
    }

    /** Whether it faces forward or rearward on the car. */
    public boolean lengthways() {
        return pose().yaw() == QuarterTurn.R0 || pose().yaw() == QuarterTurn.R180;
    }

    public Box box() {
        return pose().outline(shape.size());
    }

    public List<Box> solids() {
        return shape.solids().stream()
                .map(box -> pose().apply(box, shape.size()))
                .toList();
    }

    /** What it stands on, seen from above. */
    public Rect foot() {
        Rect foot = shape.foot();
        Box turned = pose().apply(new Box(foot.x0(), foot.y0(), 0, foot.x1(), foot.y1(), 0), shape.size());
        return new Rect(turned.x0(), turned.y0(), turned.x1(), turned.y1());
    }

    public @Nullable Point centre() {
        Point centre = shape.centre();
        return centre == null ? null : pose().apply(centre, shape.size());
    }

    public Optional<Point> eye(String name) {
        return shape.eye(name).map(eye -> pose().apply(eye.at(), shape.size()));
    }

    public List<Provision> eyes() {
        List<Provision> eyes = new ArrayList<>();
        for (Provision eye : shape.eyes()) {
            eyes.add(new Provision(eye.name(), eye.use(), pose().apply(eye.at(), shape.size()), eye.ratingN()));
        }
        return eyes;
    }

    /**
     * Its loads on the floor: under each wheel, or its mass in its centre.
     *
     * @param at place on the floor
     * @param kg load (kg)
     */
    public record FloorPoint(String name, Point at, double kg) {}

    /** Where it bears on the floor; empty if its mass is not known. */
    public List<FloorPoint> floorPoints() {
        List<FloorPoint> points = new ArrayList<>();
        Double massKg = shape.massKg();
        Point centre = centre();
        if (massKg == null || centre == null) {
            return points;
        }
        if (!shape.wheeled()) {
            points.add(new FloorPoint("underside", new Point(centre.x(), centre.y(), box().z0()), massKg));
            return points;
        }
        for (Wheel wheel : shape.wheels()) {
            side(points, wheel, true);
            side(points, wheel, false);
        }
        return points;
    }

    private void side(List<FloorPoint> points, Wheel wheel, boolean left) {
        int y = wheel.y() + (left ? 1 : -1) * (wheel.track() / 2);
        points.add(new FloorPoint(
                wheel.name() + (wheel.support() ? "" : left ? " left" : " right"),
                pose().apply(new Point(wheel.x(), y, 0), shape.size()),
                left ? wheel.leftKg() : wheel.rightKg()));
    }

    /** Places of its axles along the car (µm), from rear to front; empty if it has none. */
    public List<Integer> axlePlaces() {
        return shape.wheels().stream()
                .filter(wheel -> !wheel.support())
                .map(wheel -> pose().apply(new Point(wheel.x(), wheel.y(), 0), shape.size())
                        .x())
                .sorted()
                .toList();
    }
}
