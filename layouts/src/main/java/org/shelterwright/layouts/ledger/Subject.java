package org.shelterwright.layouts.ledger;

/** The subjects of the ledger. */
public enum Subject {
    FIT("Fit"),
    ACCESS("Access"),
    MASS("Mass"),
    FLOOR("Floor"),
    AXLES("Axles"),
    STABILITY("Stability"),
    RESTRAINT("Restraint"),
    CABLES("Cables"),
    POWER("Power"),
    HEAT("Heat"),
    BOLT_DOWN("Bolt-down"),
    TRANSPORT("Transport"),
    LIFTING("Lifting"),
    RACKS("Racks"),
    STOWAGE("Stowage");

    private final String title;

    Subject(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
