package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.sheet.Particulars;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.layouts.layout.Provenance;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.statement.MassStatement;

/**
 * What all documents of one issue are made from.
 *
 * @param program program and version that make the documents, such as "Shelterwright 0.1.0"
 */
public record Issue(Scene scene, Ledger ledger, Particulars particulars, String program) {

    /** The caution that every document bears. */
    public static final String CAUTION =
            "Planning aid. Figures rest on the data entered. Restraint, lifting, electrical"
                    + " work and transport must be checked and released by the qualified people responsible, under the rules and"
                    + " codes of the place.";

    /** The caution in one short line. */
    public static final String SHORT_CAUTION =
            "Planning aid: to be checked and released by the qualified people responsible.";

    /** The mass statement, kept with the scene. */
    MassStatement masses() {
        return scene.derived(MassStatement.class, MassStatement::of);
    }

    public String name() {
        return scene.brief().name();
    }

    /** Program and version, seed and moves of the search, and data. */
    public String madeWith() {
        Provenance provenance = scene.layout().provenance();
        String origin = provenance == null
                ? "laid out by hand"
                : "laid out with " + provenance.program()
                        + (provenance.seed() == null ? "" : ", seed " + provenance.seed())
                        + (provenance.moves() == null ? "" : ", " + provenance.moves() + " moves");
        return program + "; " + origin;
    }

    /** The verdicts in words, the worst first, such as "1 broken, 2 close, 40 met". */
    public String verdicts() {
        List<String> words = new ArrayList<>();
        for (Verdict verdict : Verdict.values()) {
            long count = ledger.count(verdict);
            if (count > 0) {
                words.add(count + " " + verdict.word());
            }
        }
        return words.isEmpty() ? "no limit checked" : String.join(", ", words);
    }

    /** The line at the foot of every page. */
    public String foot() {
        return program + ", checked " + particulars.date() + ". " + verdicts() + ". " + SHORT_CAUTION;
    }

    Body body() {
        return scene.body();
    }
}
