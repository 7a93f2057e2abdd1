package org.shelterwright.app.cli.workshop;

import java.nio.file.Path;
import java.util.List;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.study.StudyFiles;

/** Opens the studies that are named to a verb: files, or that of a sample as {@code sample:NAME}. */
public final class StudyInputs {
    private static final String SAMPLE = "sample:";

    private final StudyFiles files;

    /** @param program version of the program */
    public StudyInputs(Catalog catalog, List<RuleSet> ruleSets, String program) {
        files = new StudyFiles(catalog, ruleSets, program);
    }

    /**
     * Opens a study.
     *
     * @throws InputException if it is missing or wrong
     */
    public StudyFiles.Opened open(String name) {
        if (name.startsWith(SAMPLE)) {
            return files.open(Samples.study(name.substring(SAMPLE.length())), null);
        }
        Path file = Inputs.path(name);
        return files.open(InputFile.read(file), file.toAbsolutePath().getParent());
    }
}
