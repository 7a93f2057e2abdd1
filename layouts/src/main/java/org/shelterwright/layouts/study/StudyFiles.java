package org.shelterwright.layouts.study;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.Places;
import org.shelterwright.catalog.json.Problem;
import org.shelterwright.catalog.json.Sourced;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.file.BriefCheck;
import org.shelterwright.layouts.file.Findings;
import org.shelterwright.layouts.file.JourneyFiles;
import org.shelterwright.layouts.file.LayoutFormats;
import org.shelterwright.layouts.file.OpenedJourney;
import org.shelterwright.layouts.layout.Contents;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.samples.Samples;

/** Reads studies, holds them against the catalog, and seals them with all that their runs need. */
public final class StudyFiles {
    private static final String SAMPLE = "sample:";
    private static final Pattern FILE = Pattern.compile("[^/\\\\:\\p{Cntrl}]{1,200}");

    private final Catalog catalog;
    private final List<RuleSet> ruleSets;
    private final String program;

    /** @param program version of the program */
    public StudyFiles(Catalog catalog, List<RuleSet> ruleSets, String program) {
        this.catalog = catalog;
        this.ruleSets = List.copyOf(ruleSets);
        this.program = program;
    }

    /**
     * A study that can be run.
     *
     * @param doubts what a person should look at
     */
    public record Opened(SealedStudy study, List<Problem> doubts) {
        public Opened {
            doubts = List.copyOf(doubts);
        }
    }

    /**
     * Opens a study whose brief lies in a folder, unless it is a sample's.
     *
     * @param folder where the brief lies; {@code null} if only a sample's brief may be named
     * @throws InputException with everything that is wrong with study or brief
     */
    public Opened open(InputFile file, @Nullable Path folder) {
        Sourced<Study> study = StudyFormats.STUDY.open(file);
        String named = study.value().brief();
        if (named == null) {
            return ofJourney(study, folder);
        }
        Sourced<Brief> brief =
                LayoutFormats.BRIEF.open(brief(named, study.places().key("brief"), folder));
        Findings findings = BriefCheck.of(brief.value(), brief.places(), catalog, ruleSets);
        findings.requireUsable();
        List<Problem> problems =
                new StudyCheck(study.value(), study.places(), brief.value(), catalog, ruleSets).problems();
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        return new Opened(seal(study.value(), brief.value()), findings.doubts());
    }

    /**
     * Reads a sealed study.
     *
     * @throws InputException with everything that is wrong with it
     */
    public static SealedStudy readSealed(InputFile file) {
        Sourced<SealedStudy> read = StudyFormats.SEALED.open(file);
        try {
            read.value().plan();
            read.value().catalog();
        } catch (IllegalArgumentException e) {
            throw new InputException(read.places().key("study").text(), String.valueOf(e.getMessage()));
        }
        return read.value();
    }

    private Opened ofJourney(Sourced<Study> study, @Nullable Path folder) {
        String named = Objects.requireNonNull(study.value().journey());
        OpenedJourney journey =
                new StudyJourneys(folder).open(named, study.places().key("journey"), catalog, ruleSets);
        List<Problem> problems =
                new StudyCheck(study.value(), study.places(), journey.journey(), catalog, ruleSets).problems();
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        Set<String> cars = new LinkedHashSet<>();
        journey.journey().loads().forEach(load -> cars.add(load.car()));
        study.value()
                .axes()
                .forEach(axis -> axis.settings()
                        .forEach(setting -> setting.cars().forEach(count -> {
                            String car = count.car();
                            if (car != null) {
                                cars.add(car);
                            }
                        })));
        return new Opened(
                new SealedStudy(
                        program,
                        study.value(),
                        null,
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        JourneyFiles.whole(journey.journey(), journey.parts(), cars)),
                journey.doubts());
    }

    private static InputFile brief(String name, Places at, @Nullable Path folder) {
        if (name.startsWith(SAMPLE)) {
            return Samples.brief(name.substring(SAMPLE.length()));
        }
        if (folder == null || !FILE.matcher(name).matches() || name.equals("..")) {
            throw new InputException(
                    at.text(),
                    "The brief of a study is the name of a file in the folder of the study, or a sample such as"
                            + " \"sample:river-post\", but is \"" + name + "\".");
        }
        return InputFile.read(folder.resolve(name));
    }

    private SealedStudy seal(Study study, Brief brief) {
        Parts base = Parts.of(brief, catalog);
        Map<String, Item> items = new LinkedHashMap<>(base.items());
        Set<Body> bodies = new LinkedHashSet<>(List.of(base.body()));
        Set<Carrier> carriers = new LinkedHashSet<>();
        for (@Nullable Carrier carrier : new @Nullable Carrier[] {base.carrier(), base.trailer()}) {
            if (carrier != null) {
                carriers.add(carrier);
            }
        }
        for (StudyAxis axis : study.axes()) {
            for (Setting setting : axis.settings()) {
                setting.swaps()
                        .forEach(swap ->
                                catalog.item(swap.item()).ifPresent(item -> items.putIfAbsent(item.id(), item)));
                catalog.body(Objects.requireNonNullElse(setting.body(), "")).ifPresent(bodies::add);
                catalog.carrier(Objects.requireNonNullElse(setting.carrier(), ""))
                        .ifPresent(carriers::add);
            }
        }
        return new SealedStudy(
                program,
                study,
                brief,
                List.copyOf(bodies),
                List.copyOf(carriers),
                List.copyOf(items.values()),
                List.copyOf(base.cables().values()),
                List.copyOf(Contents.of(brief, catalog).kinds().values()),
                null);
    }
}
