package org.shelterwright.layouts.cable;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.layout.Route;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/**
 * The mass of all cables of one kind that lie in the body: {@code Σ m' L (1 + q)}, with spare, without what lies outside. Its
 * centre is that of the routes.
 *
 * @param name name of the cable
 * @param entry such as "cable supply-3x1.5", for what is missing
 * @param wires how many
 * @param data calculated mass; without a mass if that of a metre is not known
 */
public record CableMass(String name, String entry, int wires, MassData data) {
    private static final class Sum {
        private int wires;
        private double lengthM;
        private double weighted;
        private final double[] moments = new double[3];
    }

    /** By kind of cable, in the order of first use. */
    public static List<CableMass> of(Scene scene) {
        if (scene.layout().routes().isEmpty()) {
            return List.of();
        }
        RouteSheet sheet = RouteSheets.of(scene);
        double end = 1000 * scene.rules().valueOr(Figure.CABLE_SLACK_END, 0);
        double share = scene.rules().valueOr(Figure.CABLE_SLACK_SHARE, 0);
        Map<String, Sum> sums = new LinkedHashMap<>();
        for (Route route : scene.layout().routes().values()) {
            RouteShape shape = sheet.shape(route.wire()).orElse(null);
            if (shape != null && !shape.path().isEmpty()) {
                Sum sum = sums.computeIfAbsent(route.cable(), key -> new Sum());
                sum.wires++;
                sum.lengthM += CutLength.of(shape.length(), end, share) * 1e-6;
                add(sum, shape.path());
            }
        }
        List<CableMass> masses = new ArrayList<>();
        sums.forEach(
                (id, sum) -> masses.add(mass(scene.layout().parts().cables().get(id), id, sum)));
        return masses;
    }

    private static void add(Sum sum, List<Point> path) {
        for (int i = 1; i < path.size(); i++) {
            Point a = path.get(i - 1);
            Point b = path.get(i);
            double length = Bends.distance(a, b);
            sum.weighted += length;
            sum.moments[0] += length * (a.x() / 2.0 + b.x() / 2.0);
            sum.moments[1] += length * (a.y() / 2.0 + b.y() / 2.0);
            sum.moments[2] += length * (a.z() / 2.0 + b.z() / 2.0);
        }
    }

    private static CableMass mass(@Nullable Cable cable, String id, Sum sum) {
        Double kgPerM = cable == null ? null : cable.massKgPerM();
        Point centre = sum.weighted == 0
                ? null
                : new Point(
                        (int) Math.round(sum.moments[0] / sum.weighted),
                        (int) Math.round(sum.moments[1] / sum.weighted),
                        (int) Math.round(sum.moments[2] / sum.weighted));
        Double massKg = kgPerM == null ? null : Double.valueOf(kgPerM * sum.lengthM);
        return new CableMass(
                cable == null ? "Cable " + id : cable.name(),
                "cable " + id,
                sum.wires,
                new MassData(massKg, centre, MassBasis.CALCULATED, null, null, null));
    }
}
