package org.shelterwright.layouts.brief;

/**
 * One unit that a brief asks for.
 *
 * @param id unique in the brief, such as "rack-2"
 * @param name as people call it, such as "Rack 2"
 * @param item id of its catalog entry
 * @param group group in the mass statement, such as "telemetry"
 */
public record UnitSpec(String id, String name, String item, String group) {}
