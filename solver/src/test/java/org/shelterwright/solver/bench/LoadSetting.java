package org.shelterwright.solver.bench;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.shelterwright.solver.load.model.Support;

/**
 * What a measurement of loads is told on the command line.
 *
 * @param part what of it: classes, growth, practice or cars
 * @param classes which classes of the single-container sets
 * @param from first problem of each class
 * @param to last problem of each class
 * @param seconds time limits
 * @param threads how many instances run at a time, each on one thread
 * @param cpu whether the limit is processor time, for a machine that others use too
 * @param minutes how long runs of the classes may begin; what is left is done when it is measured again
 * @param verbose whether each run is told when it ends
 */
record LoadSetting(
        String part,
        String date,
        long seed,
        Path folder,
        List<Integer> classes,
        int from,
        int to,
        List<Double> seconds,
        List<Support> supports,
        int threads,
        boolean cpu,
        double minutes,
        boolean verbose) {
    private static final List<String> NAMES = List.of(
            "--part",
            "--date",
            "--seed",
            "--out",
            "--classes",
            "--problems",
            "--seconds",
            "--support",
            "--threads",
            "--clock",
            "--minutes",
            "--verbose");

    /** Reads the options; lists are separated by commas, {@code --problems} is {@code FROM-TO}. */
    static LoadSetting of(String[] args, int start) {
        Map<String, String> given = new HashMap<>();
        for (int i = start; i < args.length; i += 2) {
            if (!NAMES.contains(args[i]) || i + 1 == args.length) {
                throw new IllegalArgumentException(
                        "\"" + args[i] + "\" is not one of " + String.join(", ", NAMES) + " with a value.");
            }
            given.put(args[i], args[i + 1]);
        }
        String date = given.get("--date");
        if (date == null) {
            throw new IllegalArgumentException("Give the date of the measurement with --date.");
        }
        String part = given.getOrDefault("--part", "classes");
        if (!Set.of("classes", "growth", "practice", "cars").contains(part)) {
            throw new IllegalArgumentException("\"" + part + "\" is none of classes, growth, practice, cars.");
        }
        String[] problems = given.getOrDefault("--problems", "1-10").split("-");
        return new LoadSetting(
                part,
                date,
                Long.parseLong(given.getOrDefault("--seed", "1")),
                Path.of(given.getOrDefault("--out", "docs/benchmarks")),
                classes(given.get("--classes")),
                Integer.parseInt(problems[0]),
                Integer.parseInt(problems[problems.length - 1]),
                Arrays.stream(given.getOrDefault("--seconds", "5").split(","))
                        .map(Double::valueOf)
                        .toList(),
                Arrays.stream(given.getOrDefault("--support", "full").split(","))
                        .map(name -> name.equals("none") ? Support.NONE : Support.FULL)
                        .toList(),
                Integer.parseInt(given.getOrDefault("--threads", "1")),
                given.getOrDefault("--clock", "wall").equals("cpu"),
                Double.parseDouble(given.getOrDefault("--minutes", "600")),
                Boolean.parseBoolean(given.getOrDefault("--verbose", "false")));
    }

    private static List<Integer> classes(@org.jspecify.annotations.Nullable String listed) {
        return listed == null
                ? IntStream.rangeClosed(1, 15).boxed().toList()
                : Arrays.stream(listed.split(",")).map(Integer::valueOf).toList();
    }
}
