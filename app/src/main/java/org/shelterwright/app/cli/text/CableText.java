package org.shelterwright.app.cli.text;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.terminal.Shown;
import org.shelterwright.catalog.cable.Attenuation;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.cable.Conductors;
import org.shelterwright.catalog.space.Lengths;

/** What a cable of the catalog says, for people. */
public final class CableText {
    private CableText() {}

    public static List<String> of(Cable cable) {
        Facts facts = new Facts()
                .title(cable.id() + ": " + cable.name())
                .add("kind", "cable, " + CatalogLine.word(cable.cableClass()))
                .add("family", cable.family())
                .add("diameter", Lengths.format(cable.diameter()))
                .add("bend radius", length(cable.bendRadius()))
                .add("conductors", conductors(cable.conductors()))
                .add("mass", figure(cable.massKgPerM(), "kg/m"))
                .add("current", figure(cable.currentA(), "A, lying alone"))
                .add("attenuation", attenuation(cable.attenuation()))
                .add("longest", cable.longest() == null ? null : length(cable.longest()))
                .add("source", cable.source().text());
        facts.each("connectors", cable.connectors(), connector -> connector);
        return facts.add("note", cable.note()).lines();
    }

    private static String length(@Nullable Integer micrometres) {
        return micrometres == null ? "not known" : Lengths.format(micrometres);
    }

    private static String figure(@Nullable Double value, String unit) {
        return value == null ? "not known" : Shown.figure(value) + " " + unit;
    }

    private static @Nullable String conductors(@Nullable Conductors of) {
        return of == null
                ? null
                : of.count() + " x " + Shown.figure(of.areaMm2()) + " mm², class " + of.strandClass() + ", at most "
                        + Shown.figure(of.ohmPerKm()) + " ohm/km at 20 °C";
    }

    private static @Nullable String attenuation(@Nullable Attenuation of) {
        return of == null
                ? null
                : Shown.figure(of.k1()) + " + " + Shown.figure(of.k2()) + " f + " + Shown.figure(of.k3())
                        + " root f dB/100 m, f from " + Shown.figure(of.lowMHz()) + " to "
                        + Shown.figure(of.highMHz()) + " MHz";
    }
}
