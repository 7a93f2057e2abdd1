package org.shelterwright.layouts.study;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.samples.Samples;

/** Studies of the sample River Post for tests. */
public final class PostStudy {
    public static final Catalog CATALOG = BuiltInCatalog.read();
    public static final List<RuleSet> RULE_SETS = RuleSets.builtIn();

    private PostStudy() {}

    /** The text of a study with two axes, with the given keys added. */
    public static String text(String axes, String more) {
        return """
                {"format": "shelterwright-study", "version": 1, "id": "trial", "name": "Trial",
                 "brief": "sample:river-post", "axes": [%s], "moves": 1000%s}
                """.formatted(axes, more.isEmpty() ? "" : ", " + more);
    }

    public static Study read(String text) {
        return StudyFormats.STUDY.read(text.getBytes(StandardCharsets.UTF_8), "study.json");
    }

    public static SealedStudy sealed(String text) {
        return open(text, null).study();
    }

    static StudyFiles.Opened open(String text, @Nullable Path folder) {
        return files().open(new InputFile("study.json", text.getBytes(StandardCharsets.UTF_8)), folder);
    }

    static StudyFiles files() {
        return new StudyFiles(CATALOG, RULE_SETS, "1.0");
    }

    /** The study that comes with the program. */
    public static SealedStudy sample() {
        return files().open(Samples.study("river-post"), null).study();
    }
}
