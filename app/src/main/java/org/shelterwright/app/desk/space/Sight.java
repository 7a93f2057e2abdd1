package org.shelterwright.app.desk.space;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import org.shelterwright.app.desk.space.solid.Dress;

/**
 * Which units are shown, and how. Never part of the layout or its history.
 *
 * @param hidden ids of units
 * @param alone ids of the units that alone are shown; empty: all
 * @param xRay whether units that are not selected show their edges only
 */
public record Sight(Set<String> hidden, Set<String> alone, boolean xRay) {
    public static final Sight ALL = new Sight(Set.of(), Set.of(), false);

    public Sight {
        hidden = Set.copyOf(hidden);
        alone = Set.copyOf(alone);
    }

    public Sight hiding(Collection<String> units) {
        Set<String> more = new HashSet<>(hidden);
        more.addAll(units);
        return new Sight(more, alone, xRay);
    }

    public Sight isolating(Collection<String> units) {
        return new Sight(Set.of(), Set.copyOf(units), xRay);
    }

    public Sight withXRay(boolean on) {
        return new Sight(hidden, alone, on);
    }

    public boolean shows(String unit) {
        return !hidden.contains(unit) && (alone.isEmpty() || alone.contains(unit));
    }

    public Dress dress(String unit, Set<String> selected) {
        if (!shows(unit)) {
            return Dress.HIDDEN;
        }
        if (selected.contains(unit)) {
            return Dress.CHOSEN;
        }
        return xRay ? Dress.X_RAY : Dress.PLAIN;
    }
}
