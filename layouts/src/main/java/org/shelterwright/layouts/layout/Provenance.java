package org.shelterwright.layouts.layout;

import org.jspecify.annotations.Nullable;

/**
 * How a layout came to be.
 *
 * @param program version of the program that wrote it
 * @param seed seed of the search that found it; {@code null} if laid out by hand
 * @param moves move budget of that search; {@code null} if by hand or by time
 */
public record Provenance(
        String program, @Nullable Long seed, @Nullable Long moves) {}
