package org.shelterwright.layouts.ledger.cables;

import java.util.Optional;
import org.shelterwright.catalog.cable.Attenuation;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.brief.Duty;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.Scene;

/**
 * The loss of a line at its frequency: {@code L (k1 + k2 f + k3 √f) / 100 m ≤ a_max}. Connectors are left out. A radio-frequency
 * wire needs its frequency and greatest loss in the brief; of another wire it is looked at where the brief gives them.
 *
 * <p>Source: data of the cable; the form of the law from tables of coaxial cables (seen).
 */
final class LineLoss extends WireLimit {
    LineLoss() {
        super("cables.loss", "Loss of wire", Severity.MEDIUM, Source.stated("Brief", "duty of the wire"));
    }

    @Override
    Optional<Outcome> outcome(Scene scene, CableNet net, LaidWire wire, RowDraft draft) {
        Cable cable = wire.cable();
        Duty duty = wire.wire().duty();
        Double frequencyMHz = duty == null ? null : duty.frequencyMHz();
        Double most = duty == null ? null : duty.lossDb();
        boolean radio = cable != null && cable.cableClass() == CableClass.RADIO_FREQUENCY;
        if (!radio && (frequencyMHz == null || most == null)) {
            return Optional.empty();
        }
        String id = wire.wire().id();
        if (frequencyMHz == null || most == null) {
            return Optional.of(Outcome.missing("The frequency and the greatest loss of wire " + id
                    + " are not known. Give frequencyMHz and lossDb in its duty."));
        }
        Attenuation attenuation = cable == null ? null : cable.attenuation();
        if (attenuation == null || !attenuation.covers(frequencyMHz)) {
            return Optional.of(Outcome.missing("The attenuation of the cable of wire " + id + " at "
                    + Amounts.number(frequencyMHz, 1)
                    + " MHz is not known. Give it in its catalog entry, or choose a cable"
                    + " of which it is known."));
        }
        if (wire.cutLength() < 0) {
            return Optional.of(Outcome.missing(
                    "The length of wire " + id + " outside the body is not known. Give its \"outside\" in the brief."));
        }
        double lengthM = wire.cutLength() / 1e6;
        double lossDb = lengthM / 100 * attenuation.per100m(frequencyMHz);
        return Optional.of(Outcome.of(draft.mend("Choose a line with less loss, or move its ends nearer to each other.")
                .atMost(
                        lossDb,
                        most,
                        "dB",
                        wire.name() + " loses " + Amounts.number(lossDb, 2) + " dB of at most "
                                + Amounts.number(most, 2)
                                + " dB at " + Amounts.number(frequencyMHz, 0) + " MHz over "
                                + Amounts.number(lengthM, 2) + " m.")));
    }

    @Override
    String idle() {
        return "No wire has a frequency and a greatest loss.";
    }
}
