package org.shelterwright.solver.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/** Runs one measurement, named by the first argument, and writes its table; the rest are options of {@link Setting} or {@link LoadSetting}. */
public final class Measure {
    private static final Map<String, Function<Setting, String>> RUNS = new LinkedHashMap<>();

    static {
        RUNS.put("planted", setting -> new PlantedRuns(setting).run());
        RUNS.put("baselines", setting -> new BaselineRuns(setting).run());
        RUNS.put("samples", setting -> new SampleRuns(setting).run());
        RUNS.put("stop", setting -> new StopRuns(setting).run());
        RUNS.put("micro", setting -> new MicroRuns(setting).run());
        RUNS.put("wires", setting -> new WireRuns(setting).run());
        RUNS.put("wires-pull", setting -> new PullRuns(setting).run());
        RUNS.put("order", setting -> new OrderRuns(setting).run());
        RUNS.put("studies", setting -> new StudyRuns(setting).run());
        RUNS.put("inside", setting -> new InsideRuns(setting).run());
        RUNS.put("revision", setting -> new RevisionRuns(setting).run());
        RUNS.put("mutation", setting -> new MutationRuns(setting).run());
    }

    private Measure() {}

    public static void main(String[] args) throws IOException {
        String what = args.length == 0 ? "" : args[0];
        if (what.equals("load")) {
            LoadSetting setting = LoadSetting.of(args, 1);
            String text = switch (setting.part()) {
                case "practice" -> new PracticeRuns(setting).run();
                case "growth" -> new GrowthRuns(setting).run();
                case "cars" -> new CarRuns(setting).run();
                default -> new LoadRuns(setting).run();
            };
            write(setting.folder(), "load-" + setting.part(), text);
            return;
        }
        Function<Setting, String> run = RUNS.get(what);
        if (run == null) {
            throw new IllegalArgumentException(
                    "Say what to measure: " + String.join(", ", RUNS.keySet()) + " or load.");
        }
        Setting setting = Setting.of(args, 1);
        write(setting.folder(), what, run.apply(setting));
    }

    private static void write(Path folder, String name, String text) throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve(name + ".md"), text, StandardCharsets.UTF_8);
        System.out.println(text);
    }
}
