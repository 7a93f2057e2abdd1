package org.shelterwright.layouts.brief;

import org.shelterwright.catalog.space.Pose;

/**
 * A unit that rides on the trailer at a place that is given, not searched.
 *
 * @param pose in the frame of the trailer
 */
public record TrailerLoad(UnitSpec unit, Pose pose) {}
