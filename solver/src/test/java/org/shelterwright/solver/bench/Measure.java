package org.shelterwright.solver.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Runs one measurement and writes its table: {@code planted}, {@code baselines}, {@code samples} or {@code micro}, then
 * the options of {@link Setting}; or {@code load}, then those of {@link LoadSetting}.
 */
public final class Measure {
    private Measure() {}

    public static void main(String[] args) throws IOException {
        if (args.length == 0) {
            throw new IllegalArgumentException("Say what to measure: planted, baselines, samples, micro or load.");
        }
        if (args[0].equals("load")) {
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
        Setting setting = Setting.of(args, 1);
        String text = switch (args[0]) {
            case "planted" -> new PlantedRuns(setting).run();
            case "baselines" -> new BaselineRuns(setting).run();
            case "samples" -> new SampleRuns(setting).run();
            case "micro" -> new MicroRuns(setting).run();
            default ->
                throw new IllegalArgumentException(
                        "\"" + args[0] + "\" is none of planted, baselines, samples, micro, load.");
        };
        write(setting.folder(), args[0], text);
    }

    private static void write(Path folder, String name, String text) throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve(name + ".md"), text, StandardCharsets.UTF_8);
        System.out.println(text);
    }
}
