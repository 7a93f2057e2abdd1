package org.shelterwright.solver.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/** Runs one measurement, named by the first argument, and writes its table; the rest are options of {@link Setting}. */
public final class Measure {
    private static final Map<String, Function<Setting, String>> RUNS = new LinkedHashMap<>();

    static {
        RUNS.put("planted", setting -> new PlantedRuns(setting).run());
        RUNS.put("baselines", setting -> new BaselineRuns(setting).run());
        RUNS.put("samples", setting -> new SampleRuns(setting).run());
        RUNS.put("stop", setting -> new StopRuns(setting).run());
        RUNS.put("micro", setting -> new MicroRuns(setting).run());
        RUNS.put("order", setting -> new OrderRuns(setting).run());
    }

    private Measure() {}

    public static void main(String[] args) throws IOException {
        Function<Setting, String> run = args.length == 0 ? null : RUNS.get(args[0]);
        if (run == null) {
            throw new IllegalArgumentException("Say what to measure: " + String.join(", ", RUNS.keySet()) + ".");
        }
        Setting setting = Setting.of(args, 1);
        String text = run.apply(setting);
        Files.createDirectories(setting.folder());
        Path file = setting.folder().resolve(args[0] + ".md");
        Files.writeString(file, text, StandardCharsets.UTF_8);
        System.out.println(text);
    }
}
