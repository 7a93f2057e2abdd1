package org.shelterwright.layouts.file;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.catalog.json.Places;
import org.shelterwright.catalog.json.Sourced;
import org.shelterwright.catalog.transit.Transit;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.scene.JourneyParts;

/** Reads and writes files of journeys. */
public final class JourneyFiles {
    public static final JsonFormat<JourneyDocument> FORMAT =
            JsonFormat.of("shelterwright-journey", 1, JourneyDocument.class);

    private JourneyFiles() {}

    /** Finds the file of a layout by the name that a piece gives it. */
    @FunctionalInterface
    public interface LayoutSource {
        /**
         * Finds it.
         *
         * @throws InputException if there is none, or the name is none that may be looked up
         */
        InputFile layout(String from);
    }

    /**
     * Reads a journey and all that it refers to: its own copies where it has them, otherwise catalog and files.
     *
     * @param catalog where cars, outlines and tables come from that it holds no copy of
     * @param ruleSets the rule sets that there are
     * @throws InputException with everything that is wrong with it
     */
    public static OpenedJourney read(InputFile file, Catalog catalog, LayoutSource layouts, List<RuleSet> ruleSets) {
        Sourced<JourneyDocument> read = FORMAT.open(file);
        Findings findings = new Findings();
        JourneyAssembly assembly = new JourneyAssembly(read.value(), read.places(), catalog, layouts, findings);
        JourneyParts parts = assembly.parts();
        findings.requireUsable();
        new JourneyCheck(read.value().journey(), parts, read.places().key("journey"), ruleSets, findings).check();
        findings.requireUsable();
        return new OpenedJourney(read.value().journey(), parts, Fingerprint.of(file.bytes()), findings.doubts());
    }

    /**
     * A journey that holds copies of all it uses, checked as one in a file of its own.
     *
     * @throws InputException with everything that is wrong with it
     */
    public static OpenedJourney open(JourneyDocument document, List<RuleSet> ruleSets) {
        Findings findings = new Findings();
        Places places = Places.none("journey " + document.journey().id());
        Catalog none = Catalog.of(List.of(), List.of(), List.of(), List.of(), List.of(), Transit.NONE);
        JourneyParts parts = new JourneyAssembly(
                        document,
                        places,
                        none,
                        from -> {
                            throw new InputException(from, "The journey holds no copy of this layout.");
                        },
                        findings)
                .parts();
        findings.requireUsable();
        new JourneyCheck(document.journey(), parts, places.key("journey"), ruleSets, findings).check();
        findings.requireUsable();
        return new OpenedJourney(document.journey(), parts, Fingerprint.NONE, findings.doubts());
    }

    /**
     * The document of a journey with copies of all outlines, lashings and tables that there are, so that it can be planned anywhere.
     *
     * @param cars ids of the transit cars that are copied; {@code null}: all
     */
    public static JourneyDocument whole(Journey journey, JourneyParts parts, @Nullable Set<String> cars) {
        return JourneyDocument.whole(journey, parts, cars);
    }

    /** What stands in the file of a journey, with copies of all that it uses. Equal journeys give equal bytes. */
    public static byte[] bytes(Journey journey, JourneyParts parts) {
        return FORMAT.write(JourneyDocument.of(journey, parts));
    }

    /**
     * Saves a journey; see {@link SafeSave}.
     *
     * @param expected what the file held when it was read; {@link Fingerprint#NONE} if it is to be new
     * @return what the file holds now
     * @throws InputException in one sentence, with everything left as it was, if it cannot be saved
     */
    public static Fingerprint write(Journey journey, JourneyParts parts, Path file, Fingerprint expected) {
        return new SafeSave().save(file, bytes(journey, parts), expected);
    }
}
