package org.shelterwright.solver.bench;

import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/**
 * What a measurement is told on the command line.
 *
 * @param date as it shall stand in the table
 * @param seed first seed
 * @param atMost how long the whole may take; what does not fit in is left out, and the table says how much was run
 * @param folder where the table goes
 */
record Setting(String date, long seed, Duration atMost, Path folder) {
    private static final Set<String> NAMES = Set.of("--date", "--seed", "--minutes", "--out");

    /**
     * Reads {@code --date DATE [--seed N] [--minutes N] [--out FOLDER]}.
     *
     * @throws IllegalArgumentException if an option is unknown or the date is missing
     */
    static Setting of(String[] args, int from) {
        Map<String, String> given = new HashMap<>();
        for (int i = from; i < args.length; i += 2) {
            if (!NAMES.contains(args[i]) || i + 1 == args.length) {
                throw new IllegalArgumentException(
                        "\"" + args[i] + "\" is not one of --date, --seed, --minutes, --out with a value.");
            }
            given.put(args[i], args[i + 1]);
        }
        String date = given.get("--date");
        if (date == null) {
            throw new IllegalArgumentException("Give the date of the measurement with --date.");
        }
        return new Setting(
                date,
                Long.parseLong(given.getOrDefault("--seed", "1")),
                Duration.ofMinutes(Long.parseLong(given.getOrDefault("--minutes", "12"))),
                Path.of(given.getOrDefault("--out", "docs/benchmarks")));
    }

    long endNanos() {
        return System.nanoTime() + atMost.toNanos();
    }
}
