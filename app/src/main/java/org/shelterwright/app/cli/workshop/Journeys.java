package org.shelterwright.app.cli.workshop;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.layouts.file.JourneyFiles;
import org.shelterwright.layouts.file.OpenedJourney;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.samples.Samples;

/** Opens the journeys that are named to a verb: files, or samples as {@code sample:NAME}. */
public final class Journeys {
    private static final String SAMPLE = "sample:";

    private final Supplier<Catalog> catalog;
    private final List<RuleSet> ruleSets;

    public Journeys(Supplier<Catalog> catalog, List<RuleSet> ruleSets) {
        this.catalog = catalog;
        this.ruleSets = List.copyOf(ruleSets);
    }

    /**
     * Opens a journey with all that it refers to.
     *
     * @throws InputException if it is missing or wrong
     */
    public OpenedJourney open(String name) {
        if (name.startsWith(SAMPLE)) {
            return JourneyFiles.read(
                    Samples.journey(name.substring(SAMPLE.length())), catalog.get(), Journeys::sample, ruleSets);
        }
        Path file = Inputs.path(name);
        Path absolute = file.toAbsolutePath().normalize();
        Path parent = absolute.getParent();
        Path folder = parent == null ? absolute : parent;
        return JourneyFiles.read(
                InputFile.read(file),
                catalog.get(),
                from -> from.startsWith(SAMPLE) ? sample(from) : beside(folder, from),
                ruleSets);
    }

    /**
     * Whether a name is that of a journey, by the format that its file states.
     *
     * @throws InputException if it is a file that cannot be read
     */
    public static boolean named(String name) {
        return name.startsWith(SAMPLE)
                ? Samples.journeys().contains(name.substring(SAMPLE.length()))
                : JsonFormat.nameIn(InputFile.read(Inputs.path(name))).equals(JourneyFiles.FORMAT.name());
    }

    private static InputFile sample(String from) {
        if (!from.startsWith(SAMPLE)) {
            throw new InputException(from, "A sample journey takes its layouts from samples only.");
        }
        String sample = from.substring(SAMPLE.length());
        return Samples.layout(sample).orElseThrow(() -> new InputException(from, "There is no such sample layout."));
    }

    /** A layout beside the journey or in a folder below; nothing else is ever looked up for a file. */
    private static InputFile beside(Path folder, String from) {
        try {
            Path named = Path.of(from);
            Path target = folder.resolve(named).normalize();
            if (named.isAbsolute() || !target.startsWith(folder)) {
                throw new InputException(from, "A layout must lie beside its journey or in a folder below it.");
            }
            return InputFile.read(target);
        } catch (InvalidPathException e) {
            throw new InputException(from, "This cannot be the name of a file. Check what you typed.");
        }
    }
}
