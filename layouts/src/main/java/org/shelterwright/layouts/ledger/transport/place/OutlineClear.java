package org.shelterwright.layouts.ledger.transport.place;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.transit.Outline;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.transport.Mode;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/**
 * What stands on an open car keeps within the outline of the way: {@code b(z) − y − (throw − allowed) >= margin} for every solid, with
 * the floor at its lowest for the lower edge and at its highest for the upper one; in curves with the throw of its section, to either
 * side. Above the outline there is no room at all. Source: the outline of the route; throw as in EN 15273 (from memory).
 */
final class OutlineClear extends LegLimit {
    OutlineClear() {
        super(
                "outline",
                "Outline of the way",
                Source.fromMemory("EN 15273", "static outline with throw in curves"),
                "No open car goes on this leg, or its way has no outline.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        if (leg.leg().mode() == Mode.SEA || leg.leg().mode() == Mode.AIR) {
            return;
        }
        for (PlacedLoad load : leg.outerLoads()) {
            if (load.car().deck().clearHeight() == null) {
                load.pieces().forEach(piece -> assess(leg, load, piece, rows));
            }
        }
    }

    private void assess(LegScene leg, PlacedLoad load, PlacedPiece piece, Rows rows) {
        RowDraft draft = draft(leg, rows, "Outline, " + piece.name()).units(List.of(piece.id(), load.id()));
        String missing = missing(leg, load);
        if (missing != null) {
            rows.add(draft.notAssessed(missing));
            return;
        }
        Outline outline = leg.outline().orElseThrow();
        int low = Objects.requireNonNull(load.car().deck().lowest());
        int high = Objects.requireNonNull(load.car().deck().highest());
        OutlineFit fit = OutlineFit.of(leg, load.car(), piece, low, high).orElseThrow();
        Rule rule = leg.rules().rule(Figure.OUTLINE_MARGIN).orElse(null);
        double margin = rule == null ? 0 : rule.value();
        int lacking = (int) Math.ceil(margin * 1000) - fit.clearance();
        rows.add(draft.place(place(fit))
                .source(outline.source())
                .mend(lacking > 0 ? mend(fit, lacking) : null)
                .atLeast(margin, fit.clearance() / 1000.0, "mm", finding(piece, load, outline, fit, leg)));
    }

    private static @Nullable String missing(LegScene leg, PlacedLoad load) {
        if (leg.outline().isEmpty()) {
            return "The outline of " + leg.state() + " is not known. Give \"outline\" of leg "
                    + leg.leg().id() + ".";
        }
        if (load.car().deck().lowest() == null || load.car().deck().highest() == null) {
            return "The floor heights of the " + load.car().name()
                    + " are not known. Give \"lowest\" and \"highest\" in the" + " deck of car "
                    + load.car().id() + ".";
        }
        if (leg.leg().mode() != Mode.RAIL || leg.outline().orElseThrow().curveM() == null) {
            return null;
        }
        if (leg.leg().curveM() == null) {
            return "The least curve of " + leg.state() + " is not known. Give \"curveM\" of leg "
                    + leg.leg().id() + ".";
        }
        int wheels = load.car().wheels().size();
        if (wheels != 2) {
            return "The throw of the " + load.car().name() + " in curves is told of two wheel groups; it states "
                    + wheels + ". Give its two bogies or axles in \"wheels\" of car "
                    + load.car().id() + ".";
        }
        return null;
    }

    private static Box place(OutlineFit fit) {
        Box solid = fit.solid();
        return fit.upward()
                ? new Box(solid.x0(), solid.y0(), solid.z1(), solid.x1(), solid.y1(), solid.z1())
                : new Box(
                        Math.min(fit.at(), solid.x1()),
                        fit.left() ? solid.y1() : solid.y0(),
                        solid.z0(),
                        Math.max(fit.at(), solid.x0()),
                        fit.left() ? solid.y1() : solid.y0(),
                        solid.z1());
    }

    private static String finding(PlacedPiece piece, PlacedLoad load, Outline outline, OutlineFit fit, LegScene leg) {
        String where = " at " + Wording.mm(fit.at()) + " along " + load.name();
        if (fit.upward()) {
            return piece.name() + " on " + load.name() + " reaches " + Wording.mm(fit.high()) + " above the way; "
                    + outline.name() + " ends at " + Wording.mm(outline.highest()) + ".";
        }
        String curve = fit.throwUm() == 0
                ? ""
                : ", and in the curve of "
                        + Math.round(Objects.requireNonNull(leg.leg().curveM())) + " m it is thrown "
                        + Lengths.rounded(fit.throwUm(), 0) + " mm";
        String side = fit.left() ? "left" : "right";
        return fit.clearance() < 0
                ? piece.name() + where + " fouls " + outline.name() + " on the " + side + " by "
                        + Lengths.rounded(-fit.clearance(), 0) + " mm: at a height of " + Wording.mm(fit.high())
                        + " its half width is " + Wording.mm(fit.halfWidth()) + curve + "; there are "
                        + Wording.mm(fit.allowed()) + "."
                : piece.name() + where + " clears " + outline.name() + " on the " + side + " by "
                        + Lengths.rounded(fit.clearance(), 0) + " mm at a height of " + Wording.mm(fit.high()) + curve
                        + ".";
    }

    private static String mend(OutlineFit fit, int lacking) {
        return fit.upward()
                ? "Take a car with a floor lower by at least " + Lengths.rounded(lacking, 0)
                        + " mm, or take off what stands up."
                : "Move it towards the middle of the car or nearer to a bogie, take a car with a lower floor, or ask for a way"
                        + " whose outline is wider by " + Lengths.rounded(lacking, 0) + " mm.";
    }
}
