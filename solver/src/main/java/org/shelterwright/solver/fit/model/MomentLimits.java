package org.shelterwright.solver.fit.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * The limits on mass, axles and stability as the search sees them. Their rows depend on the units through moments of mass
 * alone, and in every load state linearly, so the margin of a row is the least of linear functions: a concave function
 * of the moments. The limits themselves are asked at a layout and at small shifts of one unit from it; that gives a
 * tangent of each row, exact at the layout and on the safe side of no row elsewhere, as in the method of cutting planes
 * (Kelley: The cutting-plane method for solving convex programs, 1960). With masses that are uncertain a row depends a
 * little on each unit's own place too; a tangent is then exact at its layout and near it. No rule is written twice. Safe
 * for several threads.
 */
public final class MomentLimits {
    private static final Set<Subject> SUBJECTS = Set.of(Subject.MASS, Subject.AXLES, Subject.STABILITY);
    private static final int SHIFT = 10 * Lengths.MM;

    private final List<Limit.OfTotals> limits;

    public MomentLimits(LimitBook book) {
        limits = book.limits().stream()
                .filter(limit -> SUBJECTS.contains(limit.subject()))
                .filter(Limit.OfTotals.class::isInstance)
                .map(Limit.OfTotals.class::cast)
                .toList();
    }

    private MomentLimits(List<Limit.OfTotals> limits) {
        this.limits = limits;
    }

    /** The same without some limits. */
    public MomentLimits without(Set<String> ids) {
        return new MomentLimits(
                limits.stream().filter(limit -> !ids.contains(limit.id())).toList());
    }

    public boolean isEmpty() {
        return limits.isEmpty();
    }

    /** Numbers of rows by their names, and their severities, as they are met; one for each lane. Not for several threads. */
    public static final class Register {
        private final Map<String, Integer> numbers = new HashMap<>();
        private final List<Severity> severities = new ArrayList<>();
        private final List<String> titles = new ArrayList<>();
        private final List<String> units = new ArrayList<>();

        int number(String name, Measured measured) {
            return numbers.computeIfAbsent(name, key -> {
                severities.add(measured.severity());
                titles.add(measured.row().title());
                units.add(measured.row().unit());
                return severities.size() - 1;
            });
        }

        /** Title of a row, such as "Rear axle". */
        public String name(int row) {
            return titles.get(row);
        }

        /** Unit in which a row is told. */
        public String unit(int row) {
            return units.get(row);
        }

        /** Whether a row is told in mm or kg, and so is linear in the moments. */
        public boolean plain(int row) {
            return units.get(row).equals("mm") || units.get(row).equals("kg");
        }

        public boolean hard(int row) {
            return severities.get(row) == Severity.HARD;
        }
    }

    private record Measured(Row row, Severity severity) {}

    /**
     * Takes the tangents of all rows at a scene.
     *
     * @param station its moments on station
     * @param road its moments on the road
     * @return none if no unit has a mass. Cost: five assessments of the limits
     */
    public List<Plane> tangents(Scene scene, Moments station, Moments road, Register register) {
        Optional<PlacedUnit> probe = heaviest(scene);
        if (limits.isEmpty() || probe.isEmpty()) {
            return List.of();
        }
        PlacedUnit unit = probe.get();
        Map<String, Measured> base = measure(scene);
        Map<String, Measured> byX = measure(shifted(scene, unit, SHIFT, 0, 0));
        Map<String, Measured> byY = measure(shifted(scene, unit, 0, SHIFT, 0));
        Map<String, Measured> byZ = measure(shifted(scene, unit, 0, 0, SHIFT));
        Map<String, Measured> byXy = measure(shifted(scene, unit, SHIFT, SHIFT, 0));
        List<Plane> planes = new ArrayList<>();
        base.forEach((name, measured) -> {
            Double[] changes = {
                change(measured, byX.get(name)),
                change(measured, byY.get(name)),
                change(measured, byZ.get(name)),
                change(measured, byXy.get(name))
            };
            if (changes[0] != null && changes[1] != null && changes[2] != null && changes[3] != null) {
                boolean onStation = measured.row().state().startsWith(Wording.situation(Situation.ON_STATION));
                Moments at = onStation ? station : road;
                planes.add(plane(register.number(name, measured), onStation, measured, changes, unit, at));
            }
        });
        return planes;
    }

    private static Plane plane(
            int number, boolean onStation, Measured measured, Double[] changes, PlacedUnit unit, Moments at) {
        Situation situation = onStation ? Situation.ON_STATION : Situation.ON_THE_ROAD;
        double grams = grams(unit);
        Point centre = centre(unit, situation);
        double step = SHIFT;
        double stepMm = step / 1000;
        double xy = (changes[3] - changes[0] - changes[1]) / (grams * stepMm * stepMm);
        double x = (changes[0] - xy * grams * stepMm * centre.y() / 1000) / (grams * step);
        double y = (changes[1] - xy * grams * stepMm * centre.x() / 1000) / (grams * step);
        double z = changes[2] / (grams * step);
        double constant = RowAmount.margin(measured.row()) - x * at.x() - y * at.y() - z * at.z() - xy * at.xy();
        return new Plane(number, onStation, constant, x, y, z, xy);
    }

    private static @Nullable Double change(Measured from, @Nullable Measured to) {
        return to == null || to.row().margin() == null || from.row().margin() == null
                ? null
                : RowAmount.margin(to.row()) - RowAmount.margin(from.row());
    }

    private Map<String, Measured> measure(Scene scene) {
        double closeShare = scene.rules().valueOr(Figure.CLOSE_SHARE, 0.9);
        Map<String, Measured> measured = new LinkedHashMap<>();
        for (Limit.OfTotals limit : limits) {
            Rows rows = new Rows(closeShare);
            limit.assess(scene, rows);
            for (Row row : rows.list()) {
                String name = row.limit() + "|" + row.title();
                int copy = 1;
                while (measured.containsKey(name)) {
                    name = row.limit() + "|" + row.title() + "|" + copy++;
                }
                measured.put(name, new Measured(row, limit.severity()));
            }
        }
        return measured;
    }

    private static Scene shifted(Scene scene, PlacedUnit unit, int dx, int dy, int dz) {
        Point shift = new Point(dx, dy, dz);
        Placement before = unit.placement();
        Place road = before.road();
        Placement after = before.withStation(
                        before.station().with(before.station().pose().moved(shift)))
                .withRoad(road == null ? null : road.with(road.pose().moved(shift)));
        return scene.with(after);
    }

    private static Optional<PlacedUnit> heaviest(Scene scene) {
        return scene.units().stream()
                .filter(unit -> grams(unit) > 0)
                .max(java.util.Comparator.comparingDouble(MomentLimits::grams)
                        .thenComparing(PlacedUnit::index, java.util.Comparator.reverseOrder()));
    }

    private static double grams(PlacedUnit unit) {
        Double massKg = unit.mass(Situation.ON_THE_ROAD).massKg();
        return massKg == null ? 0 : Math.round(massKg * 1000);
    }

    private static Point centre(PlacedUnit unit, Situation situation) {
        Point centre = unit.mass(situation).centre();
        Point local = centre == null ? unit.item().size().box().centre() : centre;
        return unit.pose(situation).apply(local, unit.item().size());
    }
}
