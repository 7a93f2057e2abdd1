package org.shelterwright.layouts.study;

import java.util.List;
import java.util.Optional;
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
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Provenance;
import org.shelterwright.layouts.rules.RuleSet;

/**
 * A study with everything that its runs need, so that it can be gone on with, or done again, anywhere: its brief and the catalog
 * entries that its settings name. Two of them that are equal give the same table.
 *
 * @param program version of the program that sealed it, which alone may run it
 */
public record SealedStudy(
        String program,
        Study study,
        Brief brief,
        List<Body> bodies,
        List<Carrier> carriers,
        List<Item> items,
        List<Cable> cables,
        List<Piece> pieces) {
    public SealedStudy {
        bodies = List.copyOf(bodies);
        carriers = List.copyOf(carriers);
        items = List.copyOf(items);
        cables = List.copyOf(cables);
        pieces = List.copyOf(pieces);
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
        return Variant.of(brief, run.settings().values(), catalog());
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

    /** Why the start of a run cannot be laid out at all; empty if it can. */
    public static Optional<String> refusal(Layout start, List<RuleSet> ruleSets) {
        return Variant.refusal(start, ruleSets);
    }
}
