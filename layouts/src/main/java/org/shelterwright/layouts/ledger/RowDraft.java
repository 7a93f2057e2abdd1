package org.shelterwright.layouts.ledger;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.ledger.Row.Sense;
import org.shelterwright.layouts.scene.PlacedUnit;

/** Builds one row; the verdict follows from demand, capacity and the close share. */
public final class RowDraft {
    static final String DOES_NOT_APPLY = "does not apply";
    static final String AWAITED = "answer to come";

    private final Stated limit;
    private final double closeShare;
    private final String title;
    private Source source;
    private final List<String> units = new ArrayList<>();
    private @Nullable Box place;
    private String state = "always";
    private @Nullable Double nominal;
    private @Nullable String mend;

    RowDraft(Stated limit, double closeShare, String title) {
        this.limit = limit;
        this.closeShare = closeShare;
        this.title = title;
        this.source = limit.source();
    }

    public RowDraft units(PlacedUnit... concerned) {
        for (PlacedUnit unit : concerned) {
            units.add(unit.id());
        }
        return this;
    }

    public RowDraft units(List<String> ids) {
        units.addAll(ids);
        return this;
    }

    public RowDraft place(@Nullable Box where) {
        place = where;
        return this;
    }

    public RowDraft state(String name) {
        state = name;
        return this;
    }

    public RowDraft nominal(double value) {
        nominal = value;
        return this;
    }

    public RowDraft mend(@Nullable String sentence) {
        mend = sentence;
        return this;
    }

    /** The source of the value, where it differs from that of the limit (a rule set, the catalog, the brief). */
    public RowDraft source(Source other) {
        source = other;
        return this;
    }

    /** A quantity that must not exceed a capacity. */
    public Row atMost(double demand, double capacity, String unit, String finding) {
        return row(Sense.AT_MOST, demand, capacity, unit, finding);
    }

    /** A quantity of which at least what is needed must be there. */
    public Row atLeast(double needed, double there, String unit, String finding) {
        return row(Sense.AT_LEAST, needed, there, unit, finding);
    }

    /** A whole number of things of which at least so many must be there; as many as needed is met, not close. */
    public Row countedAtLeast(int needed, int there, String unit, String finding) {
        Row row = atLeast(needed, there, unit, finding);
        return row.verdict() == Verdict.CLOSE ? row.with(Verdict.MET) : row;
    }

    /** A limit that holds with nothing to measure, such as no overlap anywhere. */
    public Row held(String finding) {
        return build(Sense.AT_MOST, 0.0, 0.0, 0.0, "", Verdict.MET, finding);
    }

    /** A limit of which there is nothing to hold here, such as a rule set that is not chosen; the sentence says why. */
    public Row doesNotApply(String sentence) {
        return state(DOES_NOT_APPLY).held(sentence);
    }

    /** A limit that cannot be judged; the sentence names the missing datum and where to give it. */
    public Row notAssessed(String missing) {
        return build(Sense.AT_MOST, null, null, null, "", Verdict.NOT_ASSESSED, missing);
    }

    /** A limit whose answer is still to come; the sentence says when. */
    Row awaited(String sentence) {
        return state(AWAITED).notAssessed(sentence);
    }

    private Row row(Sense sense, double demand, double capacity, String unit, String finding) {
        if (!Double.isFinite(demand) || !Double.isFinite(capacity)) {
            throw new IllegalArgumentException(
                    "The limit " + limit.id() + " came to " + demand + " of " + capacity + ", which is no figure.");
        }
        double use = capacity > 0 ? demand / capacity : demand <= capacity ? 0 : 1 + (demand - capacity);
        Verdict verdict = demand > capacity ? Verdict.BROKEN : use > closeShare ? Verdict.CLOSE : Verdict.MET;
        return build(sense, demand, capacity, use, unit, verdict, finding);
    }

    private Row build(
            Sense sense,
            @Nullable Double demand,
            @Nullable Double capacity,
            @Nullable Double use,
            String unit,
            Verdict verdict,
            String finding) {
        return new Row(
                limit.id(),
                limit.subject(),
                title,
                units,
                place,
                state,
                sense,
                demand,
                nominal,
                capacity,
                use,
                unit,
                verdict,
                finding,
                mend,
                source);
    }
}
