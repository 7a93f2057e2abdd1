package org.shelterwright.layouts.ledger.cables;

import java.util.Optional;
import java.util.OptionalDouble;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.cable.Sizing;
import org.shelterwright.layouts.cable.WireDuty;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/**
 * No power wire carries more than its cable bears: {@code I ≤ k I_z}, with the factor k for a cable that lies in a tray with
 * others, and 1 for one that lies alone. Breakers and fault currents are not looked at.
 *
 * <p>Source: IEC 60364-5-52, tables B.52.4 and B.52.17 (from memory).
 */
final class CurrentOfWire extends WireLimit {
    CurrentOfWire() {
        super(
                "cables.current",
                "Current of wire",
                Severity.MEDIUM,
                Source.fromMemory("IEC 60364-5-52", "tables B.52.4 and B.52.17"));
    }

    @Override
    Optional<Outcome> outcome(Scene scene, CableNet net, LaidWire wire, RowDraft draft) {
        Cable cable = wire.cable();
        if (cable != null && cable.cableClass() != CableClass.POWER) {
            return Optional.empty();
        }
        String id = wire.wire().id();
        WireDuty duty = net.duty(wire);
        if (cable == null || cable.currentA() == null) {
            return Optional.of(Outcome.missing("The current that the cable of wire " + id
                    + " bears is not known. Give currentA in its catalog entry."));
        }
        if (duty.gap() != null) {
            return Optional.of(Outcome.missing(duty.gap()));
        }
        boolean among = net.sheet().uses().stream()
                .anyMatch(use -> use.wires().size() > 1 && use.wires().contains(id));
        OptionalDouble share = Sizing.share(scene, among);
        if (share.isEmpty()) {
            return Optional.of(Outcome.missing("No value is set for \"" + Figure.CABLE_GROUPING.meaning() + "\" ("
                    + Figure.CABLE_GROUPING.id() + ")."));
        }
        double bears = share.getAsDouble() * cable.currentA();
        double left = bears - duty.currentA();
        return Optional.of(Outcome.of(draft.state(duty.state())
                .mend("Choose a larger cross-section.")
                .atMost(
                        duty.currentA(),
                        bears,
                        "A",
                        wire.name() + " carries " + Amounts.number(duty.currentA(), 1) + " A of "
                                + Amounts.number(bears, 1) + " A that its cable bears"
                                + (among ? " among others: " : ": ") + Amounts.number(Math.abs(left), 1)
                                + (left < 0 ? " A too much." : " A are left."))));
    }

    @Override
    String idle() {
        return "No wire carries power.";
    }
}
