package org.shelterwright.solver.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Runs one measurement and writes its table: {@code planted}, {@code baselines}, {@code samples}, {@code micro} or {@code order}, then
 * the options of {@link Setting}.
 */
public final class Measure {
    private Measure() {}

    public static void main(String[] args) throws IOException {
        if (args.length == 0) {
            throw new IllegalArgumentException("Say what to measure: planted, baselines, samples, micro or order.");
        }
        Setting setting = Setting.of(args, 1);
        String text = switch (args[0]) {
            case "planted" -> new PlantedRuns(setting).run();
            case "baselines" -> new BaselineRuns(setting).run();
            case "samples" -> new SampleRuns(setting).run();
            case "micro" -> new MicroRuns(setting).run();
            case "order" -> new OrderRuns(setting).run();
            default ->
                throw new IllegalArgumentException(
                        "\"" + args[0] + "\" is none of planted, baselines, samples, micro, order.");
        };
        Files.createDirectories(setting.folder());
        Path file = setting.folder().resolve(args[0] + ".md");
        Files.writeString(file, text, StandardCharsets.UTF_8);
        System.out.println(text);
    }
}
