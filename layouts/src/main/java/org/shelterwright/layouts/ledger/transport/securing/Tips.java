package org.shelterwright.layouts.ledger.transport.securing;

import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.transport.Gravity;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/**
 * Nothing tips over the edge of its foot: {@code m g c d <= m g c_z b + Σ F (h cos α cos β + a sin α) + Σ F_T sin α (a1 + a2)}, with d the
 * height of its centre, b its distance to the edge, h the height of an eye and a its distance from the edge. Locked spigots hold at
 * the far edge. Source: plain balance of moments; unlashed it is the rule of EN 12195-1 that {@code b/d > c/c_z} (quoted).
 */
final class Tips extends LegLimit {
    Tips() {
        super(
                "tipping",
                "Held against tipping",
                Source.quoted(
                        "EN 12195-1:2010", "stability of unlashed loads b/d > c/cz; lashings by balance of moments"),
                "Nothing is carried on this leg, or its rules set no load case.");
    }

    record Balance(Push push, double tipsNm, double holdsNm) {
        double use() {
            return holdsNm <= 0 ? Double.MAX_VALUE : tipsNm / holdsNm;
        }
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.loads()) {
            for (Holds holds : Holds.withTiers(leg, load)) {
                Row row = row(leg, holds, rows);
                if (row != null) {
                    rows.add(row);
                }
            }
        }
    }

    private @Nullable Row row(LegScene leg, Holds holds, Rows rows) {
        Bundle bundle = holds.bundle();
        RowDraft draft = draft(leg, rows, "Tipping, " + bundle.title())
                .units(bundle.ids())
                .place(bundle.box());
        if (holds.missing() != null) {
            return draft.notAssessed(holds.missing());
        }
        Optional<Balance> worst = holds.holds().stream()
                .filter(hold -> hold.push().toward() != Face.TOP)
                .map(hold -> balance(bundle, hold.push()))
                .reduce((a, b) -> a.use() >= b.use() ? a : b);
        if (worst.isEmpty()) {
            return null;
        }
        Balance balance = worst.get();
        boolean broken = balance.tipsNm() > balance.holdsNm();
        return draft.state(leg.state() + ", " + balance.push().text())
                .mend(broken ? "Lash it from higher up on both sides, or set it on a wider base." : null)
                .atMost(
                        balance.tipsNm() / 1000,
                        balance.holdsNm() / 1000,
                        "kN·m",
                        String.format(
                                Locale.ROOT,
                                "%s, centre %d mm high%s and %d mm from the edge it would tip over (%s).",
                                bundle.name(),
                                bundle.height() / 1000,
                                bundle.level() == 0 ? "" : " above what it stands on",
                                bundle.toEdge(balance.push().toward()) / 1000,
                                balance.push().text()));
    }

    static Balance balance(Bundle bundle, Push push) {
        double weight = bundle.kg() * Gravity.STANDARD;
        double tips = weight * push.g() * Lengths.metres(bundle.height());
        double holds = weight * push.downG() * Lengths.metres(Math.max(0, bundle.toEdge(push.toward())));
        for (Rope rope : bundle.ropes()) {
            holds += rope.direct() ? direct(bundle, rope, push) : over(bundle, rope, push);
        }
        double up = Blocking.of(bundle, push.toward()).upN();
        holds += up / 2 * Lengths.metres(extent(bundle.foot(), push.toward()));
        return new Balance(push, tips, holds);
    }

    private static double direct(Bundle bundle, Rope rope, Push push) {
        double against = -push.along(rope.alongX(), rope.alongY());
        Double bears = rope.bearsN();
        if (against < 0 || bears == null) {
            return 0;
        }
        double arm = Lengths.metres(fromEdge(bundle.foot(), rope.top(), push.toward()));
        return Math.max(0, bears * (against * Lengths.metres(rope.top().z() - bundle.level()) + rope.sine() * arm));
    }

    private static double over(Bundle bundle, Rope rope, Push push) {
        Point second = rope.top2();
        double pull = Hold.tension(rope) * rope.sine() / push.factor();
        double arm = Math.max(0, fromEdge(bundle.foot(), rope.top(), push.toward()))
                + (second == null ? 0 : Math.max(0, fromEdge(bundle.foot(), second, push.toward())));
        return pull * arm / Lengths.M;
    }

    /** Distance of a point from the edge that would be tipped over, back into the foot (µm). */
    private static int fromEdge(Rect foot, Point point, Face toward) {
        return switch (toward) {
            case FRONT -> foot.x1() - point.x();
            case REAR -> point.x() - foot.x0();
            case LEFT -> foot.y1() - point.y();
            default -> point.y() - foot.y0();
        };
    }

    private static int extent(Rect foot, Face toward) {
        return toward == Face.FRONT || toward == Face.REAR ? foot.x1() - foot.x0() : foot.y1() - foot.y0();
    }
}
