package org.shelterwright.layouts.ledger.heat;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.AirHandling;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.air.HeatBalance;
import org.shelterwright.layouts.air.StateHeat;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.Rank;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.power.PowerGap;
import org.shelterwright.layouts.scene.Scene;

/** A limit of heat: what each state needs against what is installed and on in it; the state that is worst makes the row. */
abstract class HeatLimit extends NamedLimit implements Limit.OfBrief {
    HeatLimit(String id, String title, Source source, String heldSentence) {
        super(id, Subject.HEAT, title, Severity.MEDIUM, source, heldSentence);
    }

    /**
     * What a state needs and has.
     *
     * @param there {@code null} if not known
     * @param words how the need comes about, such as "walls 200 W, people 130 W"
     */
    record Need(StateHeat heat, double needed, @Nullable Double there, String words) {
        private double rank(boolean open) {
            return Rank.of(needed, there, open);
        }
    }

    abstract Need need(StateHeat heat);

    abstract String unit();

    /** Whether a gap of the balance concerns this limit. */
    abstract boolean open(StateHeat heat);

    abstract String what();

    abstract String mend(double missing);

    /** The units whose work the limit is about. */
    abstract boolean does(AirHandling air);

    @Override
    public final void assess(Scene scene, Rows rows) {
        HeatBalance balance = HeatBalance.of(scene);
        RowDraft draft = rows.draft(this);
        if (balance.states().isEmpty()) {
            rows.add(draft.notAssessed(
                    "The brief states no operating state with its weather. Give states and their weather"
                            + " in its services."));
            return;
        }
        Need worst = null;
        for (StateHeat heat : balance.states()) {
            Need need = need(heat);
            if (worst == null || need.rank(open(heat)) > worst.rank(open(worst.heat()))) {
                worst = need;
            }
        }
        Need need = Objects.requireNonNull(worst);
        Double there = need.there();
        draft.state(need.heat().state().name());
        if (there == null || open(need.heat()) && need.needed() <= there) {
            gap(draft, rows, need.heat().gaps());
            return;
        }
        double left = there - need.needed();
        if (left < 0) {
            draft.mend(mend(-left));
        }
        draft.units(scene.brief().units().stream()
                .filter(unit -> does(scene, unit))
                .map(UnitSpec::id)
                .toList());
        rows.add(draft.atLeast(
                need.needed(),
                there,
                unit(),
                what() + " " + amount(need.needed()) + " " + need.heat().state().name() + need.words() + ", and "
                        + amount(there) + " is installed and on: " + amount(Math.abs(left))
                        + (left < 0 ? " too little." : " more than needed.")));
    }

    private boolean does(Scene scene, UnitSpec unit) {
        var plant = scene.layout().item(unit).plant();
        var air = plant == null ? null : plant.air();
        return air != null && does(air);
    }

    final String amount(double value) {
        return Amounts.number(value, 0) + " " + unit();
    }

    private static void gap(RowDraft draft, Rows rows, List<PowerGap> gaps) {
        String more = gaps.size() > 1 ? " (and " + Wording.count(gaps.size() - 1, "gap") + " more)" : "";
        rows.add(draft.units(gaps.stream()
                        .map(PowerGap::unit)
                        .filter(Objects::nonNull)
                        .distinct()
                        .toList())
                .notAssessed(gaps.get(0).sentence() + more));
    }
}
