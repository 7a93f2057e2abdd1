package org.shelterwright.layouts.state;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.brief.TrailerLoad;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * The plain twin of the load states: lists mass points of one state in the frame of the truck, or of the trailer, and leaves all
 * formulas to the test. Every choice (fill, mass and centre within their ranges) is a number from 0 to 1 by name.
 */
final class BruteForce {
    private final Scene scene;
    private final Situation situation;
    private final ToDoubleFunction<String> choice;
    final List<double[]> body = new ArrayList<>();
    final List<double[]> truck = new ArrayList<>();
    final List<double[]> trailer = new ArrayList<>();

    BruteForce(Scene scene, Situation situation, ToDoubleFunction<String> choice) {
        this.scene = scene;
        this.situation = situation;
        this.choice = choice;
        MassData tare = scene.body().tare();
        body.add(point("tare", tare, tare.centre()));
        for (PlacedUnit unit : scene.units()) {
            add(
                    body,
                    unit.id(),
                    unit.item(),
                    unit.placement().in(this.situation).pose());
        }
        scene.carrier().ifPresent(carrier -> {
            vehicle(truck, "truck", carrier);
            double person = scene.rules().valueOr(Figure.PERSON_MASS, 0);
            for (int i = 0; i < scene.brief().crew(); i++) {
                truck.add(at(
                        choice.applyAsDouble("crew") * person,
                        carrier.seats().get(i).at(),
                        0,
                        0,
                        0));
            }
            for (double[] one : body) {
                Point shift = carrier.bodyAt();
                truck.add(new double[] {
                    one[0], one[1] + shift.x() / 1e6, one[2] + shift.y() / 1e6, one[3] + shift.z() / 1e6
                });
            }
        });
        scene.trailer().ifPresent(carrier -> {
            vehicle(trailer, "trailer", carrier);
            for (TrailerLoad load : scene.brief().trailer().loads()) {
                add(trailer, load.unit().id(), scene.layout().item(load.unit()), load.pose());
            }
        });
    }

    /** All choices at 0 or 1, drawn; or anywhere between. */
    static ToDoubleFunction<String> drawn(Random random, boolean corners) {
        Map<String, Double> kept = new HashMap<>();
        return name -> kept.computeIfAbsent(name, unused -> corners ? (double) random.nextInt(2) : random.nextDouble());
    }

    private void vehicle(List<double[]> points, String name, Carrier carrier) {
        double height = carrier.tareCentreHeight() == null ? 0 : carrier.tareCentreHeight();
        for (Axle axle : carrier.axles()) {
            points.add(new double[] {axle.tareKg(), axle.x() / 1e6, 0, height / 1e6});
        }
        for (Tank tank : carrier.tanks()) {
            points.add(at(fill(name, tank), tank.centre(), 0, 0, 0));
        }
    }

    private void add(List<double[]> points, String name, Item item, Pose pose) {
        points.add(point(name, item.mass(), pose.apply(item.mass().centre(), item.size())));
        for (Tank tank : item.tanks()) {
            points.add(at(fill(name, tank), pose.apply(tank.centre(), item.size()), 0, 0, 0));
        }
    }

    private double fill(String name, Tank tank) {
        double share = choice.applyAsDouble(name + "/" + tank.name());
        return tank.leastKg() + share * (tank.fullKg() - tank.leastKg());
    }

    private double[] point(String name, MassData data, Point centre) {
        String basis = data.basis().name().toLowerCase();
        Map<String, Double> limits = scene.brief().limits();
        double growth = data.growthShare() != null ? data.growthShare() : limits.get("mass.growth-" + basis);
        double off = data.uncertaintyKg() != null
                ? data.uncertaintyKg()
                : data.massKg() * limits.get("mass.uncertainty-" + basis);
        double range = data.centreUncertainty() == null ? 0 : data.centreUncertainty() / 1e6;
        double mass = Math.max(0, data.massKg() * (1 + growth) + off * side(name + "/mass"));
        return at(mass, centre, range * side(name + "/x"), range * side(name + "/y"), range * side(name + "/z"));
    }

    private double side(String name) {
        return 2 * choice.applyAsDouble(name) - 1;
    }

    private static double[] at(double mass, Point place, double dx, double dy, double dz) {
        return new double[] {mass, place.x() / 1e6 + dx, place.y() / 1e6 + dy, place.z() / 1e6 + dz};
    }

    static double sum(List<double[]> points, ToDoubleFunction<double[]> of) {
        return points.stream().mapToDouble(of).sum();
    }
}
