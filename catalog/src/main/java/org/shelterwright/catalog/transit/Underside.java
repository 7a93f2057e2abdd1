package org.shelterwright.catalog.transit;

/** What a load stands with on a floor, as tables of friction name it. */
public enum Underside {
    SAWN_TIMBER("sawn timber"),
    PLANED_TIMBER("planed wood"),
    PLASTIC_PALLET("plastic pallet"),
    STEEL_CRATE("steel crate"),
    ROUGH_METAL("unpainted rough metal"),
    PAINTED_METAL("painted metal"),
    TYRES("rubber tyres"),
    ANTI_SLIP("anti-slip rubber");

    private final String word;

    Underside(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
