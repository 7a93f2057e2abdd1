package org.shelterwright.layouts.study.results;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.file.OpenedJourney;
import org.shelterwright.layouts.file.SafeSave;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.study.Found;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.StudyFiles;
import org.shelterwright.layouts.study.StudyFormats;
import org.shelterwright.layouts.study.StudyPlan;

/** The folder of a study: the sealed study, and the results of its runs. */
public final class StudyFolder {
    /** Name of the file of the sealed study. */
    public static final String SEALED = "study.json";

    /** Name of the file of results. */
    public static final String RESULTS = "results.jsonl";

    private final Path folder;
    private final SealedStudy study;

    private StudyFolder(Path folder, SealedStudy study) {
        this.folder = folder;
        this.study = study;
    }

    /**
     * Makes the folder of a study, or opens it if the same study was begun there.
     *
     * @throws InputException if another study stands in the folder, or it cannot be written
     */
    public static StudyFolder prepare(Path folder, SealedStudy study) {
        Path file = folder.resolve(SEALED);
        if (Files.exists(file)) {
            SealedStudy there = StudyFiles.readSealed(InputFile.read(file));
            if (!there.fingerprint().equals(study.fingerprint())) {
                throw new InputException(file.toString(), difference(there, study));
            }
            return new StudyFolder(folder, there);
        }
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new InputException(folder.toString(), "The folder cannot be made (" + e.getMessage() + ").");
        }
        new SafeSave().save(file, StudyFormats.SEALED.write(study), Fingerprint.NONE);
        return new StudyFolder(folder, study);
    }

    /**
     * Opens the folder of a study.
     *
     * @throws InputException if there is none, or its file is wrong
     */
    public static StudyFolder open(Path folder) {
        Path file = folder.resolve(SEALED);
        if (Files.isDirectory(folder) && !Files.exists(file)) {
            throw new InputException(
                    folder.toString(), "No study was run into this folder: it holds no file " + SEALED + ".");
        }
        return new StudyFolder(folder, StudyFiles.readSealed(InputFile.read(file)));
    }

    public Path path() {
        return folder;
    }

    public SealedStudy study() {
        return study;
    }

    /** Opens the results for adding; see {@link ResultsFile#open}. */
    public ResultsFile results() {
        return ResultsFile.open(folder.resolve(RESULTS), study);
    }

    /**
     * Reads the results that there are, by number of run, without the places of units.
     *
     * @throws InputException if they are of another study or damaged
     */
    public List<RunResult> table() {
        List<RunResult> table = new ArrayList<>();
        if (Files.exists(folder.resolve(RESULTS))) {
            ResultsFile.read(folder.resolve(RESULTS), study, run -> table.add(run.withoutFound()));
        }
        table.sort(Comparator.comparingInt(RunResult::run));
        return table;
    }

    /**
     * The layout that a run found.
     *
     * @throws InputException if there is no result of it, it was refused, or its places were not kept
     */
    public Layout layout(int number) {
        StudyPlan.Run run = study.plan().run(number);
        if (study.ofJourney()) {
            throw new InputException(folder.toString(), "Run " + number + " is of a journey and has no layout.");
        }
        return study.with(run, found(number, run));
    }

    /**
     * The journey that a run planned, with all that it uses.
     *
     * @param ruleSets the rule sets that there are
     * @throws InputException if there is no result of it, it was refused, or its places were not kept
     */
    public OpenedJourney journey(int number, List<RuleSet> ruleSets) {
        StudyPlan.Run run = study.plan().run(number);
        return study.journeyWith(run, found(number, run), ruleSets);
    }

    private Found found(int number, StudyPlan.Run run) {
        @Nullable RunResult[] last = new @Nullable RunResult[1];
        if (Files.exists(folder.resolve(RESULTS))) {
            ResultsFile.read(folder.resolve(RESULTS), study, one -> last[0] = one.run() == number ? one : last[0]);
        }
        RunResult result = last[0];
        if (result == null) {
            throw new InputException(folder.toString(), "There is no result of run " + number + " yet.");
        }
        if (result.refused() != null) {
            throw new InputException(folder.toString(), "Run " + number + " has no layout: " + result.refused());
        }
        Found found = result.found();
        if (found == null) {
            throw new InputException(
                    folder.toString(),
                    "The places of run " + number + " were not kept. Fit it again with the seed " + run.seed() + " and "
                            + study.study().moves() + " moves, or keep them in the study.");
        }
        return found;
    }

    private static String difference(SealedStudy there, SealedStudy here) {
        if (!there.study().id().equals(here.study().id())) {
            return "The folder holds the study \"" + there.study().id() + "\", not \""
                    + here.study().id() + "\". Name another folder.";
        }
        if (!there.program().equals(here.program())) {
            return "The study was begun by version " + there.program() + " of the program; this is " + here.program()
                    + ", whose results may differ. Name another folder, or go on with that version.";
        }
        String what = !there.study().equals(here.study())
                ? "The study"
                : !Objects.equals(there.brief(), here.brief())
                        ? "The brief of the study"
                        : "A catalog entry of the study";
        return what + " has changed since it was begun here, and results of both would not fit together. Name another"
                + " folder.";
    }
}
