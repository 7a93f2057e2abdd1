package org.shelterwright.layouts.ledger.transport.way;

import java.util.List;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.lifting.LiftingLimits;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.transport.Gravity;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.Shape;

/**
 * What is lifted on a leg has points that bear it. A body answers the limits of the subject lifting; a container its rating, since its
 * corner fittings are made for twice that (ISO 1496-1, top lift, from memory); anything else {@code φ m g / (2 sin θ)} in each of two
 * lifting eyes, with the jerk φ and legs at θ above the level.
 */
final class Lifted extends LegLimit {
    private static final double USUAL_JERK = 1.3;
    private static final double USUAL_ANGLE = 60;

    private final List<Limit> limits = LiftingLimits.all();

    Lifted() {
        super(
                "lifted",
                "Lifting points",
                Source.fromMemory(
                        "ISO 1496-1 and the subject lifting", "containers by their rating, bodies by their eyes"),
                "Nothing is lifted on this leg.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (String id : leg.leg().lifts()) {
            RowDraft draft = draft(
                            leg, rows, "Lifting, " + leg.journey().journey().nameOf(id))
                    .units(List.of(id));
            leg.journey().shape(id).ifPresent(shape -> rows.add(row(leg, shape, draft)));
            leg.journey().load(id).ifPresent(load -> rows.add(row(load, draft)));
        }
    }

    private Row row(LegScene leg, Shape shape, RowDraft draft) {
        Layout layout = shape.layout();
        Piece.Part part =
                leg.journey().journey().piece(shape.id()).map(Piece::part).orElse(null);
        if (layout != null && part == Piece.Part.BODY) {
            return LayoutRows.told(draft, LayoutRows.of(leg, layout, limits, QuarterTurn.R0), shape.name());
        }
        List<Provision> eyes = shape.eyes().stream()
                .filter(eye -> eye.use() == Provision.Use.LIFTING || eye.use() == Provision.Use.BOTH)
                .toList();
        if (eyes.size() < 2 || shape.massKg() == null) {
            return draft.notAssessed(
                    shape.name() + " states no lifting eyes" + (shape.massKg() == null ? " and no mass" : "")
                            + ". Lift it on forks or in a net by the carrier's rules, or give its eyes.");
        }
        double jerk = leg.rules().valueOr(Figure.LIFT_DYNAMIC_FACTOR, USUAL_JERK);
        double angle = leg.rules().valueOr(Figure.SLING_ANGLE, USUAL_ANGLE);
        double needN = shape.mostKg() * Gravity.STANDARD * jerk / (2 * Math.sin(Math.toRadians(angle)));
        Provision weakest = eyes.get(0);
        for (Provision eye : eyes) {
            Double rating = eye.ratingN();
            Double least = weakest.ratingN();
            if (rating == null || least != null && rating < least) {
                weakest = eye;
            }
        }
        Double rating = weakest.ratingN();
        return rating == null
                ? draft.notAssessed("The eye \"" + weakest.name() + "\" of " + shape.name() + " states no rating.")
                : draft.atMost(
                        needN / 1000,
                        rating / 1000,
                        "kN",
                        "Two eyes of " + shape.name() + " bear its weight with a jerk of " + Amounts.number(jerk, 2)
                                + ", on legs at " + Amounts.number(angle, 0)
                                + "° above the level. With its centre off their middle one bears more.");
    }

    private static Row row(PlacedLoad load, RowDraft draft) {
        Double rating = load.car().grossRatingKg();
        if (rating == null || load.car().outside() == null) {
            return draft.notAssessed("The " + load.car().name()
                    + " is no container with a rating, so its lifting points are" + " not known.");
        }
        double kg = load.car().tareKg() + load.massKg() + load.uncertaintyKg();
        return load.unknown().isPresent()
                ? draft.notAssessed(load.unknown().get())
                : draft.atMost(
                        kg,
                        rating,
                        "kg",
                        load.name() + " weighs up to " + Amounts.kg(kg) + " of the " + Amounts.kg(rating)
                                + " that its corner fittings are made for.");
    }
}
