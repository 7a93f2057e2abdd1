package org.shelterwright.catalog.piece;

/** What carries a rack-mounted piece. */
public enum RackSupport {
    /** The front uprights alone, by its panel. */
    FRONT_UPRIGHTS,
    /** Rails or slides between the front and the rear uprights. */
    FRONT_AND_REAR,
    /** It lies on a shelf, which is fixed to the front and the rear uprights. */
    SHELF
}
