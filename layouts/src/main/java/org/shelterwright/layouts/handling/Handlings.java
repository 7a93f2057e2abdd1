package org.shelterwright.layouts.handling;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.handling.Handling.Means;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.state.MassModel;

/**
 * Chooses how units are handled: by hand if one or two people may; else on the trolley what stands on the floor; else by hand
 * by as many people as may; else by hoist.
 *
 * <p>By hand: the lesser limit of the revised lifting equation where the unit is taken up (its bottom on the floor) and where it
 * is set down. The hands hold it at half its height, at most 400 mm above its bottom; H = 20 cm + W/2, and 25 cm + W/2 below
 * 25 cm (94-110, page 8), W the lesser of its extents; several people stand close to its edges. Several people lift a share of
 * the sum of what each lifts. What is held above 1.5 m is lifted by somebody on a step platform, to whom it is handed.
 */
public final class Handlings {
    private static final List<Figure> FIGURES = List.of(
            Figure.LIFT_CONSTANT,
            Figure.LIFT_TWIST,
            Figure.LIFT_RATE,
            Figure.LIFT_GRIP,
            Figure.LIFT_PEOPLE,
            Figure.TEAM_OF_TWO,
            Figure.TEAM_OF_MORE,
            Figure.TEAM_HOLD,
            Figure.STEP_PLATFORM,
            Figure.TROLLEY_RATING,
            Figure.HOIST_RATING);
    private static final double MOST_GRIP_CM = 40;
    private static final double FROM_PLATFORM_CM = 150;
    static final int READILY = 2;

    private final Rules rules;
    private final MassModel model;

    public Handlings(Rules rules) {
        this.rules = rules;
        this.model = new MassModel(rules);
    }

    /** The first figure that handling needs and the rules do not set; empty if all are set. */
    public Optional<Figure> missing() {
        return FIGURES.stream().filter(figure -> rules.rule(figure).isEmpty()).findFirst();
    }

    /** The greatest that a mass may be, with growth and uncertainty (kg); empty if not known. */
    private OptionalDouble massKg(MassData mass) {
        OptionalDouble grown = model.grownKg(mass);
        OptionalDouble range = model.uncertaintyKg(mass);
        return grown.isEmpty() || range.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(grown.getAsDouble() + range.getAsDouble());
    }

    /** How a unit is handled that weighs what its item does; empty if that or a figure is not known. */
    public Optional<Handling> of(PlacedUnit unit) {
        return of(unit, unit.item().mass());
    }

    /**
     * How a unit of a mass is handled; empty if that or a figure is not known.
     *
     * @param carried its mass as it is brought in, tanks empty
     */
    public Optional<Handling> of(PlacedUnit unit, MassData carried) {
        OptionalDouble mass = massKg(carried);
        if (mass.isEmpty() || missing().isPresent()) {
            return Optional.empty();
        }
        double kg = mass.getAsDouble();
        double alone = onePersonKg(unit, 1);
        for (int people = 1; people <= READILY; people++) {
            if (kg <= teamKg(unit, people)) {
                return Optional.of(new Handling(Means.BY_HAND, people, kg, teamKg(unit, people), alone));
            }
        }
        if (unit.outline(Situation.ON_STATION).z0() == 0) {
            return Optional.of(new Handling(Means.TROLLEY, READILY, kg, value(Figure.TROLLEY_RATING), alone));
        }
        for (int people = READILY + 1; people <= value(Figure.LIFT_PEOPLE); people++) {
            if (kg <= teamKg(unit, people)) {
                return Optional.of(new Handling(Means.BY_HAND, people, kg, teamKg(unit, people), alone));
            }
        }
        return Optional.of(new Handling(Means.HOIST, READILY, kg, value(Figure.HOIST_RATING), alone));
    }

    private double teamKg(PlacedUnit unit, int people) {
        double share = people == 1 ? 1 : people == 2 ? value(Figure.TEAM_OF_TWO) : value(Figure.TEAM_OF_MORE);
        return share * people * onePersonKg(unit, people);
    }

    private double onePersonKg(PlacedUnit unit, int people) {
        Box outline = unit.outline(Situation.ON_STATION);
        double grip = Math.min(MOST_GRIP_CM, cm(outline.extent(Axis.Z)) / 2);
        double risen = cm(outline.z0());
        double width = cm(Math.min(outline.extent(Axis.X), outline.extent(Axis.Y)));
        double step = grip + risen > FROM_PLATFORM_CM ? value(Figure.STEP_PLATFORM) / 10 : 0;
        double distance = Math.max(0, risen - step);
        return Math.min(limitKg(people, width, grip, distance), limitKg(people, width, grip + risen - step, distance));
    }

    /** Whether a unit is set down from a step platform. */
    public static boolean fromPlatform(PlacedUnit unit) {
        Box outline = unit.outline(Situation.ON_STATION);
        return Math.min(MOST_GRIP_CM, cm(outline.extent(Axis.Z)) / 2) + cm(outline.z0()) > FROM_PLATFORM_CM;
    }

    private double limitKg(int people, double widthCm, double heightCm, double distanceCm) {
        double near = heightCm >= 25 ? 20 : 25;
        double horizontal = people == 1 ? near + widthCm / 2 : value(Figure.TEAM_HOLD) / 10;
        return new RevisedLifting(
                        value(Figure.LIFT_CONSTANT),
                        horizontal,
                        heightCm,
                        distanceCm,
                        value(Figure.LIFT_TWIST),
                        value(Figure.LIFT_RATE),
                        value(Figure.LIFT_GRIP))
                .limitKg();
    }

    private double value(Figure figure) {
        return rules.value(figure).orElseThrow();
    }

    private static double cm(int micrometres) {
        return micrometres / 10_000.0;
    }
}
