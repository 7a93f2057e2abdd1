package org.shelterwright.layouts.ledger;

/** What a row says, in the order in which rows are shown. Missing data is never "met". */
public enum Verdict {
    BROKEN("broken"),
    CLOSE("close"),
    NOT_ASSESSED("not assessed"),
    MET("met");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
