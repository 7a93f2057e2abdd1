package org.shelterwright.layouts.study;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.Places;
import org.shelterwright.layouts.file.JourneyFiles;
import org.shelterwright.layouts.file.OpenedJourney;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.samples.Samples;

/** Finds the journey of a study: a sample's, or a file in the folder of the study, as are the layouts of its pieces. */
final class StudyJourneys {
    private static final String SAMPLE = "sample:";
    private static final Pattern FILE = Pattern.compile("[^/\\\\:\\p{Cntrl}]{1,200}");

    private final @Nullable Path folder;

    /** @param folder where files lie; {@code null} if only samples may be named */
    StudyJourneys(@Nullable Path folder) {
        this.folder = folder;
    }

    OpenedJourney open(String name, Places at, Catalog catalog, List<RuleSet> ruleSets) {
        InputFile file = name.startsWith(SAMPLE)
                ? Samples.journey(name.substring(SAMPLE.length()))
                : file(
                        name,
                        at.text(),
                        "The journey of a study is the name of a file in the folder of the study, or a sample such as"
                                + " \"sample:road-rail-move\", but is \"" + name + "\".");
        return JourneyFiles.read(file, catalog, this::layout, ruleSets);
    }

    private InputFile layout(String from) {
        return from.startsWith(SAMPLE)
                ? Samples.layout(from.substring(SAMPLE.length()))
                        .orElseThrow(() -> new InputException(from, "There is no such sample layout."))
                : file(from, from, "A layout must lie in the folder of the study.");
    }

    private InputFile file(String name, String place, String wrong) {
        Path there = folder;
        if (there == null || !FILE.matcher(name).matches() || name.equals("..")) {
            throw new InputException(place, wrong);
        }
        return InputFile.read(there.resolve(name));
    }
}
