package org.shelterwright.layouts.ledger.floor;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.CrossMember;
import org.shelterwright.catalog.body.FloorZone;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.floor.MemberLoads.Governing;
import org.shelterwright.layouts.ledger.floor.MemberLoads.MemberLoad;
import org.shelterwright.layouts.ledger.mass.GapRow;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.Scene;

/** A limit of each cross-member, simply supported, at 1 g. */
abstract class MemberLimit extends NamedLimit implements Limit.OfTotals {
    private final String ratingName;
    private final String unit;

    MemberLimit(String id, String title, String ratingName, String unit) {
        super(
                id,
                Subject.FLOOR,
                title,
                Severity.HARD,
                Source.stated("Catalog", "cross-members of the body; statics of a simply supported beam"),
                "The body lists no cross-members. Its floor zones rate a load per metre and are judged by that.");
        this.ratingName = ratingName;
        this.unit = unit;
    }

    abstract @Nullable Double rating(CrossMember member);

    abstract Governing governing(MemberLoad load);

    /** What a sweep demands, in the unit of the limit. */
    abstract double demand(BeamSweep sweep);

    @Override
    public void assess(Scene scene, Rows rows) {
        Body body = scene.body();
        if (body.crossMembers().isEmpty()) {
            List<FloorZone> zones = body.floorZones();
            Optional<FloorZone> unrated =
                    zones.stream().filter(zone -> zone.perMetreKg() == null).findFirst();
            if (zones.isEmpty() || unrated.isPresent()) {
                rows.add(rows.draft(this)
                        .notAssessed("The body " + body.name() + " lists no cross-members, and "
                                + unrated.map(zone -> "its floor zone \"" + zone.name() + "\" rates no load per metre")
                                        .orElse("has no floor zones")
                                + ". Give crossMembers, or perMetreKg of each floor zone, in body " + body.id()
                                + "."));
            }
            return;
        }
        for (MemberLoad load : MemberLoads.of(scene)) {
            rows.add(row(rows, scene, load));
        }
    }

    private Row row(Rows rows, Scene scene, MemberLoad load) {
        CrossMember member = load.member();
        Governing governing = governing(load);
        double demand = demand(governing.worst());
        Double rating = rating(member);
        RowDraft draft = rows.draft(this, title() + " of " + member.name())
                .place(new Box(member.x(), member.support0(), 0, member.x(), member.support1(), 0))
                .state(governing.load().state());
        if (rating == null) {
            return draft.notAssessed("The cross-member \"" + member.name() + "\" has no such rating. Give " + ratingName
                    + " in body " + scene.body().id() + ". It bears " + Amounts.number(demand, 0) + " " + unit + ".");
        }
        FloorLoads loads = FloorLoads.of(scene);
        if (demand <= rating && !loads.gaps().isEmpty()) {
            return GapRow.of(draft, loads.gaps());
        }
        if (demand <= rating && !load.all()) {
            return draft.notAssessed("Too many tanks and people bear on " + member.name()
                    + " to try all their combinations. Take some together as one tank.");
        }
        if (demand > rating) {
            draft.mend("Move heavy units towards other cross-members, or towards the ends of this one.");
        }
        return draft.nominal(demand(governing.nominal()))
                .atMost(
                        demand,
                        rating,
                        unit,
                        member.name() + " bears " + Amounts.number(demand, 0) + " of " + Amounts.number(rating, 0) + " "
                                + unit + ".");
    }
}
