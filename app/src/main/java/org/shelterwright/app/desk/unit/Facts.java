package org.shelterwright.app.desk.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.catalog.body.HardPoint;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.ledger.fit.PlacedFixing;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.statement.MassLine;
import org.shelterwright.layouts.statement.MassStatement;

/** What is said of a unit in words: its mass, its fixings, where it is on the road. */
final class Facts {
    private static final String TIMES = "\u00d7";

    private Facts() {}

    /** Mass as stated, then with growth and range, as in the mass statement. */
    static List<String> mass(Scene scene, List<PlacedUnit> units) {
        List<MassLine> lines = MassStatement.of(scene).lines().stream()
                .filter(line -> line.source() != 'L' && line.when() != MassLine.When.ON_STATION)
                .filter(line -> units.stream().anyMatch(unit -> unit.id().equals(line.unitId())))
                .toList();
        List<String> words = new ArrayList<>();
        long unknown = lines.stream().filter(line -> line.massKg() == null).count();
        if (units.size() == 1 && unknown == 0 && !lines.isEmpty()) {
            MassLine line = lines.get(0);
            words.add(kg(line.unitMassKg()) + ", " + basis(line.source()));
            words.add("with growth " + kg(line.massKg()) + " \u00b1 " + kg(line.uncertaintyKg()));
            return words;
        }
        double sum = lines.stream()
                .map(MassLine::massKg)
                .filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .sum();
        if (unknown < lines.size()) {
            words.add("with growth " + kg(sum));
        }
        if (unknown > 0) {
            words.add(unknown == lines.size() ? "not stated" : "not stated for " + unknown + " of " + lines.size());
        }
        return words;
    }

    /** How many fixings of which thread, and how many of them land. */
    static List<String> fixings(Scene scene, PlacedUnit unit, Situation situation) {
        if (unit.item().mounting().loose() && situation == Situation.ON_STATION) {
            return List.of("loose on station");
        }
        List<PlacedFixing> fixings = PlacedFixing.of(unit, situation);
        if (fixings.isEmpty()) {
            return List.of(unit.item().mounting().loose() ? "none: it is loose" : "none stated");
        }
        Map<String, Integer> threads = new TreeMap<>();
        Map<String, Integer> takers = new TreeMap<>();
        int landed = 0;
        int intoBody = 0;
        for (PlacedFixing fixing : fixings) {
            threads.merge(fixing.fixing().thread(), 1, Integer::sum);
            if (!fixing.intoHost()) {
                intoBody++;
                for (HardPoint hardPoint : scene.body().hardPoints()) {
                    if (hardPoint.takes(
                            fixing.at(), fixing.face(), fixing.fixing().thread())) {
                        landed++;
                        takers.merge(hardPoint.name(), 1, Integer::sum);
                        break;
                    }
                }
            }
        }
        List<String> words = new ArrayList<>();
        words.add(Wording.list(threads.entrySet().stream()
                .map(entry -> entry.getValue() + " " + TIMES + " " + entry.getKey())
                .toList()));
        if (intoBody > 0) {
            words.add(landed + " of " + intoBody + " on hard points"
                    + (takers.isEmpty() ? "" : ": " + Wording.list(List.copyOf(takers.keySet()))));
        }
        if (intoBody < fixings.size()) {
            words.add(fixings.size() - intoBody + " into the unit that carries it");
        }
        return words;
    }

    /** Whether it has a place of its own on the road. */
    static String road(PlacedUnit unit) {
        return unit.placement().road() == null ? "stays in place on the road" : "stowed at a place of its own";
    }

    private static String kg(@Nullable Double value) {
        return value == null ? "unknown" : Numerals.short3(value) + "\u2009kg";
    }

    private static String basis(char letter) {
        return switch (letter) {
            case 'E' -> "estimated";
            case 'C' -> "calculated";
            case 'S' -> "from the supplier";
            default -> "weighed";
        };
    }
}
