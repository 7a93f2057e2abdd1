package org.shelterwright.catalog.transit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.transit.WagonClasses.Base;
import org.shelterwright.catalog.transit.WagonClasses.Letter;
import org.shelterwright.catalog.transit.WagonClasses.WagonClass;

/**
 * What the letters of a wagon guarantee: enough for a first choice without the sheet of a wagon.
 *
 * @param letters as they were given
 * @param axles number of axles
 * @param lengthFrom least loading length (µm); {@code null} if the letters say nothing, like the next three
 * @param lengthBelow loading length that is not reached (µm)
 * @param loadFromKg least greatest load (kg)
 * @param loadToKg greatest (kg)
 * @param kmh greatest speed (km/h)
 * @param meanings what each letter means, in their order
 */
public record WagonRange(
        String letters,
        int axles,
        @Nullable Integer lengthFrom,
        @Nullable Integer lengthBelow,
        @Nullable Double loadFromKg,
        @Nullable Double loadToKg,
        @Nullable Integer kmh,
        List<String> meanings) {
    public WagonRange {
        meanings = List.copyOf(meanings);
    }

    /**
     * Reads class letters, such as "Rgs" or "Habbiins".
     *
     * @throws IllegalArgumentException if the leading letter or a further one is not in the table
     */
    public static WagonRange of(String letters, WagonClasses table) {
        String first = letters.isEmpty() ? "" : letters.substring(0, 1);
        WagonClass found = table.classes().stream()
                .filter(one -> one.letter().equals(first))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The wagon class \"" + letters + "\" begins with \""
                        + first + "\", which the table " + table.name() + " lacks. It has "
                        + String.join(
                                ", ",
                                table.classes().stream().map(WagonClass::letter).toList())
                        + "."));
        List<String> runs = runs(letters);
        int axles = found.axles();
        for (String run : runs) {
            for (Letter letter : found.letters()) {
                Integer sets = letter.setsAxles();
                if (letter.letters().equals(run) && sets != null) {
                    axles = sets;
                }
            }
        }
        return range(letters, found, runs, axles);
    }

    private static WagonRange range(String letters, WagonClass found, List<String> runs, int axles) {
        Base base = found.bases().stream()
                .filter(one -> one.axles() == axles)
                .findFirst()
                .orElse(new Base(axles, null, null, null, null));
        List<String> meanings = new ArrayList<>(List.of(found.letter() + " " + found.meaning()));
        Integer kmh = null;
        for (String run : runs) {
            Letter letter = found.letters().stream()
                    .filter(one ->
                            one.letters().equals(run) && (one.axles() == null || Objects.equals(one.axles(), axles)))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("The wagon class \"" + letters + "\" has \"" + run
                            + "\", which class " + found.letter() + " does not know for " + axles + " axles."));
            meanings.add(run + " " + letter.meaning());
            base = new Base(
                    axles,
                    letter.setsLength() ? letter.lengthFrom() : base.lengthFrom(),
                    letter.setsLength() ? letter.lengthBelow() : base.lengthBelow(),
                    letter.setsLoad() ? letter.loadFromKg() : base.loadFromKg(),
                    letter.setsLoad() ? letter.loadToKg() : base.loadToKg());
            kmh = letter.kmh() != null ? letter.kmh() : kmh;
        }
        return new WagonRange(
                letters,
                axles,
                base.lengthFrom(),
                base.lengthBelow(),
                base.loadFromKg(),
                base.loadToKg(),
                kmh,
                meanings);
    }

    /** Equal neighbours belong together: "bb" is no two "b". A hyphen and what follows is the keeper's own. */
    private static List<String> runs(String letters) {
        int end = letters.indexOf('-') < 0 ? letters.length() : letters.indexOf('-');
        List<String> runs = new ArrayList<>();
        int from = 1;
        for (int i = 2; i <= end; i++) {
            if (i == end || letters.charAt(i) != letters.charAt(from)) {
                runs.add(letters.substring(from, i));
                from = i;
            }
        }
        return runs;
    }
}
