package org.shelterwright.layouts.samples;

import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.NearestName;
import org.shelterwright.catalog.json.ResourceFolder;

/** The samples that come with the program: {@code <name>.brief.json}, {@code <name>.layout.json},
 * {@code <name>.journey.json} and {@code <name>.study.json} beside this class. */
public final class Samples {
    private static final String BRIEF = ".brief.json";
    private static final String LAYOUT = ".layout.json";
    private static final String JOURNEY = ".journey.json";
    private static final String STUDY = ".study.json";

    private Samples() {}

    /** The names of all samples, sorted. */
    public static List<String> names() {
        return files().stream()
                .map(InputFile::name)
                .filter(name -> name.endsWith(BRIEF))
                .map(name -> plain(name, BRIEF))
                .toList();
    }

    /**
     * The brief of a sample.
     *
     * @throws InputException if there is no such sample
     */
    public static InputFile brief(String name) {
        return file(name, BRIEF)
                .orElseThrow(() -> new InputException(
                        "sample:" + name, "There is no such sample." + NearestName.hint(name, names())));
    }

    /** The layout that was found for a sample, if one is kept. */
    public static Optional<InputFile> layout(String name) {
        return file(name, LAYOUT);
    }

    /** The names of all sample journeys, sorted. */
    public static List<String> journeys() {
        return files().stream()
                .map(InputFile::name)
                .filter(name -> name.endsWith(JOURNEY))
                .map(name -> plain(name, JOURNEY))
                .toList();
    }

    /**
     * A sample journey.
     *
     * @throws InputException if there is no such sample
     */
    public static InputFile journey(String name) {
        return file(name, JOURNEY)
                .orElseThrow(() -> new InputException(
                        "sample:" + name, "There is no such sample journey." + NearestName.hint(name, journeys())));
    }

    /**
     * The study that comes with a sample.
     *
     * @throws InputException if there is no such sample, or it has no study
     */
    public static InputFile study(String name) {
        return file(name, STUDY)
                .orElseThrow(() -> new InputException(
                        "sample:" + name,
                        "There is no such study."
                                + NearestName.hint(
                                        name,
                                        files().stream()
                                                .map(InputFile::name)
                                                .filter(one -> one.endsWith(STUDY))
                                                .map(one -> plain(one, STUDY))
                                                .toList())));
    }

    private static Optional<InputFile> file(String name, String ending) {
        return files().stream()
                .filter(file -> file.name().endsWith(ending))
                .filter(file -> plain(file.name(), ending).equals(name))
                .findFirst();
    }

    private static List<InputFile> files() {
        return ResourceFolder.below(Samples.class);
    }

    private static String plain(String name, String ending) {
        return name.substring(name.lastIndexOf(' ') + 1, name.length() - ending.length());
    }
}
