package org.shelterwright.solver.study;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.fit.FitLimits;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.StudyFiles;

/** A study of four units with many quick runs. */
public final class SmallStudy {
    private static final String BRIEF = """
            {"format": "shelterwright-brief", "version": 1, "id": "small-post", "name": "Small Post",
             "body": "box-4200", "carrier": "truck-two-axle", "crew": 2, "ruleSets": ["shelter-common", "road-eu"],
             "units": [
               {"id": "rack-1", "name": "Rack 1", "item": "rack-19-34u", "group": "racks"},
               {"id": "battery-box", "name": "Battery box", "item": "battery-box-24v", "group": "power"},
               {"id": "first-aid", "name": "First-aid cabinet", "item": "first-aid-cabinet", "group": "safety"},
               {"id": "lamp", "name": "Roof lamp", "item": "lamp-roof-1200", "group": "light"}],
             "wishes": [{"kind": "near", "units": ["rack-1", "battery-box"], "distance": 300}]}
            """;

    private static final String STUDY = """
            {"format": "shelterwright-study", "version": 1, "id": "small", "name": "Small", "brief": "brief.json",
             "axes": [
               {"id": "body", "settings": [
                 {"id": "short"},
                 {"id": "long", "body": "box-6000", "carrier": "truck-three-axle"}]},
               {"id": "batteries", "settings": [
                 {"id": "as-listed"},
                 {"id": "deeper", "items": [{"item": "battery-box-24v", "deeper": 40, "heavierKg": 12}]},
                 {"id": "far-too-tall", "items": [{"item": "battery-box-24v", "taller": "3 m"}]},
                 {"id": "two", "quantities": [{"unit": "battery-box", "count": 2}]}]}],
             "seeds": {"first": 1, "count": %d}, "moves": %d}
            """;

    private SmallStudy() {}

    /** Looks at how things fit alone, which is quick. */
    public static Checker checker() {
        return new Checker(new LimitBook(FitLimits.all()), RuleSets.builtIn());
    }

    /** Eight ways to set it, each with so many seeds. */
    public static SealedStudy of(int seeds, long moves) {
        try {
            Path folder = Files.createTempDirectory("small-study");
            Path brief = Files.writeString(folder.resolve("brief.json"), BRIEF);
            byte[] study = STUDY.formatted(seeds, moves).getBytes(StandardCharsets.UTF_8);
            SealedStudy sealed = new StudyFiles(BuiltInCatalog.read(), RuleSets.builtIn(), "1.0")
                    .open(new InputFile("small.json", study), folder)
                    .study();
            Files.delete(brief);
            Files.delete(folder);
            return sealed;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
