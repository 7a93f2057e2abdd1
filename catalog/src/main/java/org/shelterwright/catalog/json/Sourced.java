package org.shelterwright.catalog.json;

/**
 * A value read from a file, with where its parts stood there.
 *
 * @param <T> what it is
 */
public record Sourced<T>(T value, Places places) {}
