package org.shelterwright.catalog.cable;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.item.Port;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Millimetres;

/**
 * One kind of cable. What is not known is {@code null}.
 *
 * @param id unique in a catalog, such as "supply-3x1.5"
 * @param family cables that differ in size alone, such as "supply-3"; a wire may leave the choice among them open
 * @param diameter outer diameter (µm)
 * @param bendRadius least radius of a fixed bend, to the middle of the cable (µm)
 * @param conductors of a fibre {@code null}
 * @param massKgPerM mass of a metre (kg/m)
 * @param currentA current that it bears without end when it lies alone (A)
 * @param attenuation of cables that carry signals
 * @param longest greatest length of a channel of it (µm); {@code null}: none
 * @param connectors connectors of ports that its ends can be fitted to
 * @param drum length on a drum (µm)
 * @param source where its electrical figures come from
 */
public record Cable(
        String id,
        String name,
        String family,
        CableClass cableClass,
        @Millimetres int diameter,
        @Nullable @Millimetres Integer bendRadius,
        @Nullable Conductors conductors,
        @Nullable Double massKgPerM,
        @Nullable Double currentA,
        @Nullable Attenuation attenuation,
        @Nullable @Millimetres Integer longest,
        List<String> connectors,
        @Nullable @Millimetres Integer drum,
        Source source,
        @Nullable String note) {
    public Cable {
        connectors = List.copyOf(connectors);
        above("diameter", id, diameter);
        above("bend radius", id, bendRadius);
        above("greatest length", id, longest);
        above("length on a drum", id, drum);
        if (bendRadius != null && bendRadius < diameter / 2) {
            throw new IllegalArgumentException("The bend radius of " + Lengths.format(bendRadius) + " mm of cable " + id
                    + " is below half its diameter of " + Lengths.format(diameter)
                    + " mm. It counts to the middle of the cable: correct one of them.");
        }
        if (massKgPerM != null) {
            Figures.positive("mass of a metre (kg/m)", massKgPerM);
        }
        if (currentA != null) {
            Figures.positive("current (A)", currentA);
        }
    }

    private static void above(String what, String id, @Nullable Integer length) {
        if (length != null && length <= 0) {
            throw new IllegalArgumentException(
                    "The " + what + " of " + Lengths.format(length) + " mm of cable " + id + " must be above zero.");
        }
    }

    /** Cross-section over all, as it counts against the fill of a tray (mm²). */
    public double areaMm2() {
        double d = diameter / 1000.0;
        return Math.PI / 4 * d * d;
    }

    /** Whether its ends can be fitted to a port: of its class, with a connector that goes on it. */
    public boolean fits(Port port) {
        return port.cableClass() == cableClass && connectors.contains(port.connector());
    }
}
