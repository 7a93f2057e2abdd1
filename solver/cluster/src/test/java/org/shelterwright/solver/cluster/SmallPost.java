package org.shelterwright.solver.cluster;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.StudyFiles;

/** A study of three units with many quick runs, a third of which is refused. */
final class SmallPost {
    private static final String BRIEF = """
            {"format": "shelterwright-brief", "version": 1, "id": "small-post", "name": "Small Post",
             "body": "box-4200", "crew": 0,
             "units": [
               {"id": "rack-1", "name": "Rack 1", "item": "rack-19-34u", "group": "racks"},
               {"id": "battery-box", "name": "Battery box", "item": "battery-box-24v", "group": "power"},
               {"id": "first-aid", "name": "First-aid cabinet", "item": "first-aid-cabinet", "group": "safety"}]}
            """;
    private static final String STUDY = """
            {"format": "shelterwright-study", "version": 1, "id": "small", "name": "Small", "brief": "brief.json",
             "axes": [
               {"id": "body", "settings": [
                 {"id": "short"},
                 {"id": "long", "body": "box-6000"}]},
               {"id": "batteries", "settings": [
                 {"id": "as-listed"},
                 {"id": "deeper", "items": [{"item": "battery-box-24v", "deeper": 40, "heavierKg": 12}]},
                 {"id": "far-too-tall", "items": [{"item": "battery-box-24v", "taller": "3 m"}]}]}],
             "seeds": {"first": 1, "count": %d}, "moves": %d}
            """;

    private SmallPost() {}

    /** Six ways to set it, each with so many seeds; its brief lies in the folder. */
    static SealedStudy study(Path folder, int seeds, long moves) throws IOException {
        Files.writeString(folder.resolve("brief.json"), BRIEF);
        byte[] text = STUDY.formatted(seeds, moves).getBytes(StandardCharsets.UTF_8);
        return new StudyFiles(BuiltInCatalog.read(), RuleSets.builtIn(), ClusterStudy.version())
                .open(new InputFile("study.json", text), folder)
                .study();
    }
}
