package org.shelterwright.layouts.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.item.Current;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Power;
import org.shelterwright.catalog.item.Power.Nominal;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.Feed;
import org.shelterwright.layouts.brief.Services;
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.brief.Trailer;
import org.shelterwright.layouts.brief.TrailerLoad;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Layout;

/**
 * Finds which unit draws from which supply. The brief says so; of a unit that it does not mention, the only supply that
 * has its voltage, current and phases is taken. If there are several or none, its supply is not known.
 */
final class Consumers {
    /** The same nominal voltage within this share, so that 400 V fits three phases of 230 V (398.4 V). */
    private static final double SAME_VOLTAGE = 0.01;

    private final Services services;
    private final Layout layout;
    private final List<Consumer> found = new ArrayList<>();

    private Consumers(Layout layout, Services services) {
        this.layout = layout;
        this.services = services;
    }

    /** The units that draw power, those of the body first, placed or not. */
    static List<Consumer> of(Layout layout, Services services) {
        Consumers consumers = new Consumers(layout, services);
        Brief brief = layout.brief();
        brief.units().forEach(unit -> consumers.add(unit, true));
        Trailer trailer = brief.trailer();
        if (trailer != null) {
            trailer.loads().stream().map(TrailerLoad::unit).forEach(unit -> consumers.add(unit, false));
        }
        return List.copyOf(consumers.found);
    }

    private void add(UnitSpec unit, boolean inside) {
        Item item = layout.item(unit);
        Power power = item.power();
        Feed feed = services.feed(unit.id()).orElse(null);
        if (power == null) {
            boolean hasPort = item.ports().stream().anyMatch(port -> port.cableClass() == CableClass.POWER);
            if (hasPort && item.plant() == null) {
                PowerGap gap = new PowerGap(
                        unit.id(),
                        unit.name() + " has a port for power, but item " + item.id()
                                + " does not say what it draws. Give \"power\" there.");
                List<String> all = services.supplies().stream().map(Supply::id).toList();
                found.add(new Consumer(unit, null, inside, null, feed, all, gap));
            }
        } else if (power.ratedW() > 0) {
            found.add(assigned(unit, power, inside, feed));
        }
    }

    private Consumer assigned(UnitSpec unit, Power power, boolean inside, @Nullable Feed feed) {
        if (feed != null) {
            Supply stated = services.supply(feed.supply()).orElse(null);
            return new Consumer(
                    unit, power, inside, stated, feed, List.of(feed.supply()), gap(unit, power, feed, stated));
        }
        List<Supply> fitting = services.supplies().stream()
                .filter(supply -> fits(power, supply))
                .toList();
        List<String> ids = fitting.stream().map(Supply::id).toList();
        if (fitting.size() == 1 && fitting.get(0).lines() == (power.threePhase() ? 3 : 1)) {
            return new Consumer(unit, power, inside, fitting.get(0), null, ids, null);
        }
        String why = fitting.isEmpty()
                ? "no supply of the brief gives"
                : fitting.size() == 1
                        ? "the phase of supply \"" + ids.get(0) + "\" is not stated for"
                        : "the supplies " + String.join(", ", ids) + " all give";
        PowerGap gap = new PowerGap(
                unit.id(),
                unit.name() + " takes " + power.supply() + ", and " + why + (fitting.size() == 1 ? " it" : " that")
                        + ". Give its feed in the services of the brief.");
        return new Consumer(unit, power, inside, null, null, ids, gap);
    }

    private static @Nullable PowerGap gap(UnitSpec unit, Power power, Feed feed, @Nullable Supply supply) {
        if (supply == null) {
            return new PowerGap(
                    unit.id(),
                    "The supply \"" + feed.supply() + "\" of " + unit.name()
                            + " is not stated in the brief. State it.");
        }
        boolean phaseKnown = supply.lines() == 1 || power.threePhase() || feed.phase() != null;
        return phaseKnown
                ? null
                : new PowerGap(
                        unit.id(),
                        unit.name() + " draws from one phase of " + supply.name()
                                + ", and the brief does not say which. Give the phase of its feed.");
    }

    /** Whether a supply has the voltage, the current and the phases that a load takes. */
    static boolean fits(Power power, Supply supply) {
        Optional<Nominal> nominal = power.nominal();
        if (nominal.isEmpty() || nominal.get().current() != supply.current()) {
            return false;
        }
        boolean three = power.threePhase();
        if (three && (supply.lines() != 3 || supply.current() == Current.DC)) {
            return false;
        }
        double voltageV = three ? supply.voltageV() * Math.sqrt(3) : supply.voltageV();
        return Math.abs(nominal.get().voltageV() - voltageV) <= SAME_VOLTAGE * voltageV;
    }
}
