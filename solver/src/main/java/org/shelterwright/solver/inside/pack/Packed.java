package org.shelterwright.solver.inside.pack;

import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.layout.Posture;

/** A parcel at its place. */
public record Packed(Parcel parcel, Posture posture, Box box) {}
