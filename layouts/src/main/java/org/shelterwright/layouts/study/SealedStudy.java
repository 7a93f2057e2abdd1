package org.shelterwright.layouts.study;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.json.ContentHash;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.Places;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.transit.Transit;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.file.JourneyDocument;
import org.shelterwright.layouts.file.JourneyFiles;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.file.OpenedJourney;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Provenance;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.transport.Journey;

/**
 * A study with everything that its runs need, so that it can be gone on with, or done again, anywhere: its brief and the catalog
 * entries that its settings name. Two of them that are equal give the same table.
 *
 * @param program version of the program that sealed it, which alone may run it
 * @param brief {@code null} in a study of a journey
 * @param journey with copies of all that its runs need; {@code null} in a study of a brief
 */
public record SealedStudy(
        String program,
        Study study,
        @Nullable Brief brief,
        List<Body> bodies,
        List<Carrier> carriers,
        List<Item> items,
        List<Cable> cables,
        List<Piece> pieces,
        @Nullable JourneyDocument journey) {
    public SealedStudy {
        bodies = List.copyOf(bodies);
        carriers = List.copyOf(carriers);
        items = List.copyOf(items);
        cables = List.copyOf(cables);
        pieces = List.copyOf(pieces);
        if ((brief == null) == (journey == null)) {
            throw new IllegalArgumentException("A sealed study holds either a brief or a journey.");
        }
    }

    /** A study of a brief. */
    public SealedStudy(
            String program,
            Study study,
            Brief brief,
            List<Body> bodies,
            List<Carrier> carriers,
            List<Item> items,
            List<Cable> cables,
            List<Piece> pieces) {
        this(program, study, brief, bodies, carriers, items, cables, pieces, null);
    }

    /** SHA-256 of all that it says. */
    public String fingerprint() {
        return ContentHash.of(StudyFormats.SEALED, this);
    }

    public StudyPlan plan() {
        return StudyPlan.of(study);
    }

    public Catalog catalog() {
        return Catalog.of(items, bodies, carriers, cables, pieces, Transit.NONE);
    }

    /**
     * The layout that a run starts with: everything is still to be placed.
     *
     * @throws IllegalArgumentException with a sentence if its settings make no sense together
     */
    public Layout start(StudyPlan.Run run) {
        Brief base = brief;
        if (base == null) {
            throw new IllegalArgumentException("Run " + run.number() + " is of a journey and has no layout.");
        }
        return Variant.of(base, run.settings().values(), catalog());
    }

    /**
     * The layout of a run with what was found for it, held against its brief as if read from a file.
     *
     * @throws InputException if it does not fit the run
     */
    public Layout with(StudyPlan.Run run, Found found) {
        String name = "run " + run.number();
        try {
            Layout layout = found.onto(start(run)).withProvenance(new Provenance(program, run.seed(), study.moves()));
            return LayoutFiles.layout(LayoutFiles.document(layout), Places.none(name));
        } catch (IllegalArgumentException e) {
            throw new InputException(name, String.valueOf(e.getMessage()));
        }
    }

    /** Whether the runs load a journey. */
    public boolean ofJourney() {
        return journey != null;
    }

    /**
     * The journey that a run starts with: nothing has a place that the settings opened.
     *
     * @param ruleSets the rule sets that there are
     * @throws IllegalArgumentException with a sentence if its settings make no sense together
     */
    public OpenedJourney journeyStart(StudyPlan.Run run, List<RuleSet> ruleSets) {
        JourneyDocument base = journey;
        if (base == null) {
            throw new IllegalArgumentException("Run " + run.number() + " is of a brief and has no journey.");
        }
        Journey varied = JourneyVariant.of(base.journey(), run.settings().values());
        try {
            return JourneyFiles.open(new JourneyDocument(varied, base.copies()), ruleSets);
        } catch (InputException e) {
            throw new IllegalArgumentException(e.problems().get(0).sentence(), e);
        }
    }

    /**
     * The journey of a run with what was found for it.
     *
     * @throws InputException if it does not fit the run
     */
    public OpenedJourney journeyWith(StudyPlan.Run run, Found found, List<RuleSet> ruleSets) {
        OpenedJourney start = journeyStart(run, ruleSets);
        Journey loaded =
                start.journey().withLoads(found.loads()).withProvenance(new Provenance(program, run.seed(), null));
        return JourneyFiles.open(JourneyFiles.whole(loaded, start.parts(), null), ruleSets);
    }

    /** Why the start of a run cannot be laid out at all; empty if it can. */
    public static Optional<String> refusal(Layout start, List<RuleSet> ruleSets) {
        return Variant.refusal(start, ruleSets);
    }
}
