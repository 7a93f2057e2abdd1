package org.shelterwright.catalog.transit;

/** What a loading floor is of, as tables of friction name it. */
public enum FloorMaterial {
    SAWN_TIMBER("sawn timber"),
    PLYWOOD("plywood"),
    GROOVED_ALUMINIUM("grooved aluminium"),
    STAINLESS_STEEL("stainless steel sheet"),
    ROUGH_METAL("unpainted rough metal"),
    PAINTED_METAL("painted metal");

    private final String word;

    FloorMaterial(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
