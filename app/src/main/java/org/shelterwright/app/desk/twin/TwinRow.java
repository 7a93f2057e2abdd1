package org.shelterwright.app.desk.twin;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.app.desk.session.Standing;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * A unit as the table tells it, in words and figures (mm, kg).
 *
 * @param unit id
 * @param findings such as "2 broken, 1 close"; "none" if every row is met
 */
record TwinRow(
        String unit,
        String name,
        String item,
        String surface,
        String x,
        String y,
        String z,
        String turn,
        String mass,
        String findings) {
    /** All units of the brief, in its order. */
    static List<TwinRow> of(Standing standing, Situation situation) {
        Scene scene = standing.scene();
        Map<String, Map<Verdict, Integer>> counts = counts(standing);
        List<TwinRow> rows = new ArrayList<>();
        for (UnitSpec spec : scene.brief().units()) {
            String findings = words(counts.getOrDefault(spec.id(), Map.of()));
            Item item = scene.layout().item(spec);
            rows.add(scene.unit(spec.id())
                    .map(unit -> placed(unit, scene, situation, findings))
                    .orElseGet(() -> new TwinRow(
                            spec.id(), spec.name(), item.name(), "to place", "", "", "", "", mass(scene.filled(spec, situation).mass()), findings)));
        }
        return rows;
    }

    /** The row in one sentence, for a screen reader. */
    String sentence() {
        return x.isEmpty()
                ? name + ", " + item + ", still to be placed."
                : name + ", " + item + ", " + surface + ", x " + x + ", y " + y + ", z " + z + " mm, turned " + turn
                        + ", findings: " + findings + ".";
    }

    private static TwinRow placed(PlacedUnit unit, Scene scene, Situation situation, String findings) {
        Point at = unit.pose(situation).at();
        return new TwinRow(
                unit.id(),
                unit.name(),
                unit.item().name(),
                surface(unit.place(situation), scene),
                Numerals.mm(at.x()),
                Numerals.mm(at.y()),
                Numerals.mm(at.z()),
                unit.pose(situation).yaw().degrees() + "\u00b0",
                mass(unit.mass(situation)),
                findings);
    }

    private static String surface(Place place, Scene scene) {
        String host = place.host() == null
                ? ""
                : scene.unit(place.host()).map(PlacedUnit::name).orElse(place.host());
        return switch (place.surface()) {
            case FLOOR -> "floor";
            case WALL -> "wall";
            case ROOF -> "roof";
            case ON_UNIT -> "on " + host;
            case UNDER_UNIT -> "under " + host;
        };
    }

    private static String mass(MassData mass) {
        Double kg = mass.massKg();
        return kg == null ? "not known" : Numerals.short3(kg);
    }

    private static Map<String, Map<Verdict, Integer>> counts(Standing standing) {
        Map<String, Map<Verdict, Integer>> counts = new HashMap<>();
        for (Row row : standing.ledger().rows()) {
            for (String unit : row.units()) {
                counts.computeIfAbsent(unit, id -> new EnumMap<>(Verdict.class)).merge(row.verdict(), 1, Integer::sum);
            }
        }
        return counts;
    }

    private static String words(Map<Verdict, Integer> counts) {
        List<String> words = new ArrayList<>();
        counts.forEach((verdict, count) -> {
            if (verdict != Verdict.MET) {
                words.add(count + " " + verdict.word());
            }
        });
        return words.isEmpty() ? "none" : String.join(", ", words);
    }
}
