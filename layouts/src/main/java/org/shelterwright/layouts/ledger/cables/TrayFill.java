package org.shelterwright.layouts.ledger.cables;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.Fill;
import org.shelterwright.layouts.cable.TrayUse;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/**
 * No tray or duct is fuller than it may be, at its fullest section: {@code Σ π d²/4 ≤ k b h}. Of a closed duct k depends on the
 * number of cables.
 *
 * <p>Source: NEC (NFPA 70), chapter 9, table 1, for ducts (as quoted); common practice for trays.
 */
final class TrayFill extends CableLimit {
    TrayFill() {
        super(
                "cables.fill",
                "Fill of tray",
                Severity.MEDIUM,
                Source.quoted("NEC (NFPA 70)", "chapter 9, table 1; trays by common practice"));
    }

    @Override
    void assess(Scene scene, CableNet net, Rows rows) {
        for (Figure figure :
                List.of(Figure.TRAY_FILL, Figure.DUCT_FILL_ONE, Figure.DUCT_FILL_TWO, Figure.DUCT_FILL_MORE)) {
            if (scene.rules().value(figure).isEmpty()) {
                rows.add(UnsetFigure.row(rows, this, figure));
                return;
            }
        }
        Fill fill = fill(scene);
        Told told = new Told();
        for (TrayUse use : net.sheet().fullest(scene.body().trays())) {
            told.add(row(net, fill, use, rows));
        }
        told.into(rows);
        if (told.isEmpty()) {
            boolean routed = net.wires().stream().anyMatch(wire -> wire.routed());
            rows.add(
                    routed
                            ? rows.draft(this).doesNotApply("No cable lies in a tray.")
                            : rows.draft(this)
                                    .notAssessed("No wire has a route that could be judged. Route the wires first."));
        }
    }

    /** The shares that the rules of a scene set. */
    static Fill fill(Scene scene) {
        return new Fill(
                scene.rules().valueOr(Figure.TRAY_FILL, Fill.NEC.tray()),
                scene.rules().valueOr(Figure.DUCT_FILL_ONE, Fill.NEC.one()),
                scene.rules().valueOr(Figure.DUCT_FILL_TWO, Fill.NEC.two()),
                scene.rules().valueOr(Figure.DUCT_FILL_MORE, Fill.NEC.more()));
    }

    private Row row(CableNet net, Fill fill, TrayUse use, Rows rows) {
        double most = fill.most(use.tray().tray().closed(), use.wires().size());
        double over = (use.share() - most) * use.insideMm2();
        var points = use.tray().between(use.from(), use.to());
        var place = Box.between(points.get(0), points.get(0));
        for (var point : points) {
            place = place.hull(Box.between(point, point));
        }
        List<String> units = net.wires().stream()
                .filter(wire -> use.wires().contains(wire.wire().id()))
                .flatMap(wire -> wire.units().stream())
                .distinct()
                .toList();
        return rows.draft(this, title() + ", " + use.name())
                .units(units)
                .place(place)
                .mend("Route a cable by another tray, choose thinner ones, or make the tray larger.")
                .atMost(
                        use.share(),
                        most,
                        "share",
                        "The " + use.name() + " is filled to " + Amounts.percent(use.share()) + " of "
                                + Amounts.percent(most) + " where it is fullest, by "
                                + Wording.count(use.wires().size(), "cable") + " ("
                                + String.join(
                                        ", ",
                                        use.wires()
                                                .subList(
                                                        0,
                                                        Math.min(8, use.wires().size())))
                                + (use.wires().size() > 8 ? ", ..." : "") + "): "
                                + Amounts.number(Math.abs(over), 0) + (over > 0 ? " mm² too much." : " mm² are left."));
    }
}
