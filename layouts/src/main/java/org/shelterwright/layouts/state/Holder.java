package org.shelterwright.layouts.state;

/** What holds a mass; each has its own frame. */
public enum Holder {
    /** The body and all units in it. */
    BODY,
    /** The carrier itself: tare, tanks and crew. */
    CARRIER,
    /** The trailer with its tanks and loads. */
    TRAILER
}
