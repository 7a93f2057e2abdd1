package org.shelterwright.layouts.ledger.cables;

import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
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
 * The voltage drop of a power wire with its conductors warm: {@code 2 L I r_θ / U} (three phases {@code L I r_θ / U}), with
 * {@code r_θ = r_20 (230 + θ)/250}.
 *
 * <p>Source: NEC (NFPA 70), informational notes to 210.19 and 215.2 (3 % of a branch, 5 % in all, as quoted); IEC 60228 for the
 * resistance.
 */
final class DropOfWire extends WireLimit {
    DropOfWire() {
        super(
                "cables.drop",
                "Voltage drop of wire",
                Severity.MEDIUM,
                Source.quoted("NEC (NFPA 70)", "informational notes to 210.19 and 215.2"));
    }

    @Override
    Optional<Outcome> outcome(Scene scene, CableNet net, LaidWire wire, RowDraft draft) {
        Cable cable = wire.cable();
        if (cable != null && cable.cableClass() != CableClass.POWER) {
            return Optional.empty();
        }
        WireDuty duty = net.duty(wire);
        OptionalDouble temperature = scene.rules().value(Figure.CONDUCTOR_TEMPERATURE);
        OptionalDouble rule = Sizing.mostDrop(scene, wire.wire());
        Double most = rule.isPresent() ? Double.valueOf(rule.getAsDouble()) : null;
        String gap = gap(wire, cable, duty, temperature, most);
        if (gap != null || cable == null || cable.conductors() == null || most == null) {
            return Optional.of(Outcome.missing(gap == null ? "It is not known." : gap));
        }
        double lengthM = wire.cutLength() / 1e6;
        double share = Sizing.drop(duty, cable.conductors(), lengthM, temperature.orElse(20));
        double volts = share * duty.voltageV();
        return Optional.of(Outcome.of(draft.state(duty.state())
                .mend("Choose a larger cross-section, or move its ends nearer to each other.")
                .atMost(
                        share,
                        most,
                        "share",
                        wire.name() + " loses " + Amounts.number(volts, 2) + " V of "
                                + Amounts.number(duty.voltageV(), 0)
                                + " V (" + Amounts.percent(share) + " of at most " + Amounts.percent(most) + ") at "
                                + Amounts.number(duty.currentA(), 1) + " A over " + Amounts.number(lengthM, 2)
                                + " m.")));
    }

    private static @Nullable String gap(
            LaidWire wire, @Nullable Cable cable, WireDuty duty, OptionalDouble temperature, @Nullable Double most) {
        String id = wire.wire().id();
        if (cable == null) {
            return "The cable of wire " + id + " is not among the parts of the layout, so that its drop is not known.";
        }
        if (cable.conductors() == null) {
            return "The conductors of cable " + cable.id() + " are not known. Give them in its catalog entry.";
        }
        if (duty.gap() != null) {
            return duty.gap();
        }
        if (wire.cutLength() < 0) {
            return "The length of wire " + id + " outside the body is not known. Give its \"outside\" in the brief.";
        }
        if (temperature.isEmpty() || most == null) {
            Figure figure = most == null ? Figure.VOLTAGE_DROP : Figure.CONDUCTOR_TEMPERATURE;
            return "No value is set for \"" + figure.meaning() + "\" (" + figure.id() + ").";
        }
        return null;
    }

    @Override
    String idle() {
        return "No wire carries power.";
    }
}
