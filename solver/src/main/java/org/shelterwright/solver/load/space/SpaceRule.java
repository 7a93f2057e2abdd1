package org.shelterwright.solver.load.space;

/** Which free space is filled next. */
public enum SpaceRule {
    /** The lowest; of those, the nearest to a corner of the room. */
    LOWEST,
    /** The nearest to a corner of the room, by the sum of the three distances. */
    NEAREST,
    /** The nearest to the front wall; of those, the lowest: for a load that is built wall by wall. */
    FOREMOST
}
