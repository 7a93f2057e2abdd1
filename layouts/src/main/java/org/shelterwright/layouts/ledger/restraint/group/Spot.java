package org.shelterwright.layouts.ledger.restraint.group;

/** A point of the mounting plane (m). */
public record Spot(double s, double t) {}
