package org.shelterwright.catalog.body;

import org.shelterwright.catalog.space.Box;

/** A solid of the body itself that stands into its inside, such as a wheel arch, in the frame of the body. */
public record Intrusion(String name, Box box) {}
