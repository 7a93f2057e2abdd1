package org.shelterwright.app.journey;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.shelterwright.app.report.Issue;
import org.shelterwright.app.sheet.Particulars;
import org.shelterwright.layouts.layout.Provenance;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.transport.JourneyLedger;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Leg;
import org.shelterwright.layouts.transport.scene.JourneyScene;

/**
 * What all documents of one journey are made from.
 *
 * @param program program and version that make the documents
 */
public record JourneyIssue(JourneyScene scene, JourneyLedger ledger, Particulars particulars, String program) {
    public Journey journey() {
        return scene.journey();
    }

    public String name() {
        return journey().name();
    }

    /** The names of pieces and loads, by their ids. */
    public String names(List<String> ids) {
        return ids.stream().map(journey()::nameOf).collect(Collectors.joining(", "));
    }

    /** The verdicts in words, the worst first. */
    public String verdicts() {
        return verdicts(ledger.all());
    }

    public static String verdicts(Ledger ledger) {
        List<String> words = new ArrayList<>();
        for (Verdict verdict : Verdict.values()) {
            long count = ledger.count(verdict);
            if (count > 0) {
                words.add(count + " " + verdict.word());
            }
        }
        return String.join(", ", words);
    }

    /** What a row of a leg says, what would mend it, and who accepted it. */
    static String sentences(Row row, Leg leg) {
        String mend = row.mend();
        return row.finding()
                + (mend == null ? "" : " " + mend)
                + leg.acceptance(row.limit(), row.units())
                        .map(one -> " " + one.sentence())
                        .orElse("");
    }

    String madeWith() {
        Provenance provenance = journey().provenance();
        return provenance == null || provenance.seed() == null
                ? program + ", loaded by hand"
                : program + ", seed " + provenance.seed();
    }

    String foot() {
        return program + ", checked " + particulars.date() + ". " + verdicts() + ". " + Issue.SHORT_CAUTION;
    }
}
