package org.shelterwright.catalog.plausible;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;

/**
 * What is odd about an item. The bounds are common practice, not a standard: equipment as a whole weighs some tens to some
 * hundreds of kilograms a cubic metre; solid steel has 7 850 kg/m³ and lead 11 340 kg/m³ (from memory).
 */
public final class ItemOddities {
    /** Above lead: no equipment is as dense over its whole outline (kg/m³). */
    private static final double ABSURD_DENSITY = 12_000;

    private static final double DENSE = 3_000;
    private static final double LIGHT = 5;
    private static final double HEAVY_KG = 3_000;
    private static final int ABSURDLY_THIN = Lengths.MM;
    private static final int THIN = 10 * Lengths.MM;
    private static final int LONG = 15 * Lengths.M;
    private static final int ABSURDLY_LONG = 100 * Lengths.M;
    private static final int REACH = 10 * Lengths.M;

    private ItemOddities() {}

    public static List<Oddity> of(Item item) {
        List<Oddity> found = new ArrayList<>();
        for (Axis axis : Axis.values()) {
            length(item, axis, found);
        }
        if (found.stream().anyMatch(Oddity::absurd)) {
            return found;
        }
        reach(item, found);
        Double massKg = item.mass().massKg();
        if (massKg != null) {
            mass(item, massKg, found);
        }
        Point centre = item.mass().centre();
        if (centre != null && !item.size().box().contains(centre)) {
            found.add(Oddity.doubtful(
                    "mass", "The centre of mass of item " + item.id() + " lies outside its size. Check it."));
        }
        return found;
    }

    private static void length(Item item, Axis axis, List<Oddity> found) {
        int length = item.size().along(axis);
        String what = "The size " + axis.name().toLowerCase(Locale.ROOT) + " = " + Lengths.format(length)
                + " mm of item " + item.id();
        if (length < ABSURDLY_THIN) {
            found.add(Oddity.absurd("size", what + " is below 1 mm. Lengths are in millimetres: correct it."));
        } else if (length > ABSURDLY_LONG) {
            found.add(Oddity.absurd("size", what + " is above 100 m. Lengths are in millimetres: correct it."));
        } else if (length < THIN) {
            found.add(Oddity.doubtful("size", what + " is below 10 mm. Lengths are in millimetres: is it right?"));
        } else if (length > LONG) {
            found.add(Oddity.doubtful("size", what + " is above 15 m. Lengths are in millimetres: is it right?"));
        }
    }

    private static void reach(Item item, List<Oddity> found) {
        Box near = item.size().box().grown(REACH, REACH, REACH);
        item.zones().stream()
                .filter(zone -> !near.contains(zone.box()))
                .forEach(zone -> far("zones", "clear zone", zone.name(), item, found));
        item.movableParts().stream()
                .filter(part -> !near.contains(part.sweep()))
                .forEach(part -> far("movableParts", "movable part", part.name(), item, found));
        item.fixings().stream()
                .filter(fixing -> !near.contains(fixing.at()))
                .forEach(fixing -> far("fixings", "fixing", fixing.name(), item, found));
        item.ports().stream()
                .filter(port -> !near.contains(port.at()))
                .forEach(port -> far("ports", "port", port.name(), item, found));
        item.supports().stream()
                .filter(support -> !near.contains(support.area().at(support.height(), support.height())))
                .forEach(support -> far("supports", "support", support.name(), item, found));
    }

    private static void far(String key, String kind, String name, Item item, List<Oddity> found) {
        found.add(Oddity.absurd(
                key,
                "The " + kind + " \"" + name + "\" of item " + item.id() + " reaches more than 10 m beyond its size."
                        + " Lengths are in millimetres: correct it."));
    }

    private static void mass(Item item, double massKg, List<Oddity> found) {
        double density = massKg / item.size().volumeM3();
        String what = String.format(
                Locale.ROOT,
                "The mass of %s kg of item %s makes %.0f kg/m³ over its size",
                new BigDecimal(massKg)
                        .round(new MathContext(6))
                        .stripTrailingZeros()
                        .toPlainString(),
                item.id(),
                density);
        if (density > ABSURD_DENSITY) {
            found.add(Oddity.absurd("mass", what + ", denser than lead. Correct the mass (kg) or the size (mm)."));
        } else if (density > DENSE) {
            found.add(Oddity.doubtful("mass", what + ", denser than equipment mostly is. Is it right?"));
        } else if (massKg > 0 && density < LIGHT) {
            found.add(Oddity.doubtful("mass", what + ", lighter than foam. Is it right?"));
        } else if (massKg > HEAVY_KG) {
            found.add(Oddity.doubtful("mass", what + " and is above 3000 kg. Is it right?"));
        }
    }
}
