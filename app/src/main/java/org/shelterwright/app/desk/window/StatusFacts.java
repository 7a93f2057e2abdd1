package org.shelterwright.app.desk.window;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shelterwright.app.desk.session.Standing;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.statement.MassStatement;
import org.shelterwright.layouts.statement.StateTotal;

/** The facts of the status line that come from the layout. */
final class StatusFacts {
    private static final int MOST_NAMES = 3;

    private StatusFacts() {}

    /** @param shown whether a page is shown that speaks of the layout; if not, its facts take no place */
    static void show(StatusLine line, Standing now, boolean shown) {
        Layout layout = now.layout();
        line.show(
                "Placed",
                shown
                        ? layout.placements().size() + " of "
                                + layout.brief().units().size()
                        : "");
        line.show("Limits", shown ? counts(now.ledger()) : "");
        if (!shown) {
            line.show("Filled body, on the road", "");
            line.show("Centre of mass", "");
        } else if (!now.tryingOut()) {
            Optional<StateTotal> body = body(MassStatement.of(now.scene()));
            line.show("Filled body, on the road", body.map(StatusFacts::mass).orElse("not assessed"));
            line.show("Centre of mass", body.map(StatusFacts::centre).orElse("not assessed"));
        }
    }

    /** The names of units, or how many there are, with their mass after the catalog; empty if none. */
    static String names(Set<String> units, Layout layout) {
        List<String> names = layout.brief().units().stream()
                .filter(unit -> units.contains(unit.id()))
                .map(UnitSpec::name)
                .toList();
        if (names.isEmpty()) {
            return "";
        }
        String words = names.size() > MOST_NAMES ? names.size() + " units" : String.join(", ", names);
        return words + ", " + mass(units, layout);
    }

    private static String mass(Set<String> units, Layout layout) {
        double kg = 0;
        for (UnitSpec unit : layout.brief().units()) {
            if (units.contains(unit.id())) {
                Double one = layout.item(unit).mass().massKg();
                if (one == null) {
                    return "mass not known";
                }
                kg += one;
            }
        }
        return Numerals.short3(kg) + Numerals.GAP + "kg";
    }

    private static String counts(Ledger ledger) {
        StringBuilder words = new StringBuilder();
        for (Verdict verdict : Verdict.values()) {
            long count = ledger.count(verdict);
            if (count > 0) {
                words.append(words.isEmpty() ? "" : ", ")
                        .append(count)
                        .append(' ')
                        .append(verdict.word());
            }
        }
        return words.toString();
    }

    private static Optional<StateTotal> body(MassStatement masses) {
        return masses.states().stream()
                .filter(total -> total.what().equals("Filled body"))
                .filter(total ->
                        total.state().startsWith("on the road") && total.state().contains("tanks full"))
                .findFirst()
                .or(() -> masses.states().stream()
                        .filter(total -> total.what().equals("Filled body"))
                        .findFirst());
    }

    private static String mass(StateTotal total) {
        Double mass = total.massKg();
        return mass == null ? "not assessed" : Numerals.of(mass, 0) + Numerals.GAP + "kg";
    }

    private static String centre(StateTotal total) {
        Double x = total.xMm();
        Double y = total.yMm();
        Double z = total.zMm();
        return x == null || y == null || z == null
                ? "not assessed"
                : "x " + Numerals.of(x, 0) + ", y " + Numerals.of(y, 0) + ", z " + Numerals.of(z, 0);
    }
}
