package org.shelterwright.layouts.ledger.transport.securing;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/** The force in the lashings of a bundle against what one part of each bears: the lashing itself, its eye, its anchor points. */
final class PartForce extends LegLimit {
    /** A part of a lashing. */
    enum Part {
        LASHING("lashing", "Force in the lashings", "itself"),
        EYE("eye", "Force at the eyes", "its eye"),
        ANCHOR("anchor", "Force at the anchor points", "its anchor points");

        private final String id;
        private final String title;
        private final String word;

        Part(String id, String title, String word) {
            this.id = id;
            this.title = title;
            this.word = word;
        }
    }

    private final Part part;

    PartForce(Part part) {
        super(
                part.id + "-force",
                part.title,
                Source.quoted("EN 12195-1:2010", "the force in a lashing is within LC and what its points bear"),
                "Nothing is lashed so on this leg.");
        this.part = part;
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.loads()) {
            for (Holds holds : Holds.withTiers(leg, load)) {
                if (holds.missing() == null) {
                    worst(leg, holds, rows);
                }
            }
        }
    }

    private void worst(LegScene leg, Holds holds, Rows rows) {
        Rope worst = null;
        double force = 0;
        double bears = 0;
        for (Map.Entry<Rope, Double> one : holds.forces().entrySet()) {
            Double limit = limit(one.getKey());
            if (limit != null && (worst == null || one.getValue() / limit > force / bears)) {
                worst = one.getKey();
                force = one.getValue();
                bears = limit;
            }
        }
        if (worst == null) {
            return;
        }
        RowDraft draft = draft(leg, rows, part.title + ", " + holds.bundle().title())
                .units(holds.bundle().ids());
        rows.add(draft.mend(force > bears ? "Add lashings that pull the same way, or take stronger ones." : null)
                .atMost(
                        force / 1000,
                        bears / 1000,
                        "kN",
                        "Lashing " + worst.lashing().key() + " carries " + Math.round(force / 100) / 10.0 + " kN; "
                                + part.word + (part == Part.ANCHOR ? " bear " : " bears ")
                                + Math.round(bears / 100) / 10.0
                                + " kN."));
    }

    private @Nullable Double limit(Rope rope) {
        return switch (part) {
            case LASHING -> rope.kind().capacityN();
            case EYE -> rope.eyeN();
            case ANCHOR -> rope.anchorN();
        };
    }
}
