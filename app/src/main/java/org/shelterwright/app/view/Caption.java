package org.shelterwright.app.view;

/**
 * What stands on a picture besides the layout.
 *
 * @param title such as "River Post"
 * @param subtitle such as "on station, seen from the rear right"
 * @param foot one small line: versions, date, caution
 */
public record Caption(String title, String subtitle, String foot) {}
