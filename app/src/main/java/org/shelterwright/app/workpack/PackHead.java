package org.shelterwright.app.workpack;

/**
 * What stands on every part of a work pack.
 *
 * @param name of the layout, for people
 * @param id of the layout
 * @param date of the check
 * @param caution the caution that every document bears
 * @param foot one line at the foot of every page
 */
public record PackHead(String name, String id, String date, String caution, String foot) {}
