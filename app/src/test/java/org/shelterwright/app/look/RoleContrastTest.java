package org.shelterwright.app.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The contrasts that the look promises, on light and on dark ground: text 4.5, graphics 3 (WCAG 2.2, see {@link Contrast}). */
class RoleContrastTest {

    @ParameterizedTest
    @CsvSource({
        "TEXT, PANEL, 15.51, 14.23, 4.5",
        "TEXT, RAISED, 16.55, 12.47, 4.5",
        "TEXT, SURFACE, 13.59, 15.81, 4.5",
        "TEXT, VIEW, 13.17, 15.16, 4.5",
        "TEXT, WASH, 12.98, 10.08, 4.5",
        "MUTED, PANEL, 7.00, 7.97, 4.5",
        "MUTED, RAISED, 7.47, 6.99, 4.5",
        "MUTED, SURFACE, 6.14, 8.86, 4.5",
        "MUTED, VIEW, 5.95, 8.50, 4.5",
        "MUTED, WASH, 5.86, 5.65, 4.5",
        "ACCENT, PANEL, 6.66, 8.30, 4.5",
        "ACCENT, RAISED, 7.10, 7.28, 4.5",
        "ON_ACCENT, ACCENT, 7.10, 8.69, 4.5",
        "MET, PANEL, 6.27, 8.90, 4.5",
        "MET, WASH, 5.24, 6.31, 4.5",
        "MET, MET_WASH, 5.39, 7.23, 4.5",
        "CLOSE, PANEL, 5.94, 9.06, 4.5",
        "CLOSE, WASH, 4.97, 6.42, 4.5",
        "CLOSE, RAISED, 6.34, 7.95, 4.5",
        "CLOSE, CLOSE_WASH, 5.23, 7.29, 4.5",
        "BROKEN, PANEL, 7.56, 7.48, 4.5",
        "BROKEN, WASH, 6.32, 5.30, 4.5",
        "BROKEN, RAISED, 8.06, 6.56, 4.5",
        "BROKEN, BROKEN_WASH, 6.27, 6.56, 4.5",
        "PANEL, BROKEN, 7.56, 7.48, 4.5",
        "NOT_ASSESSED, PANEL, 6.97, 9.62, 4.5",
        "NOT_ASSESSED, WASH, 5.83, 6.82, 4.5",
        "NOT_ASSESSED, NOT_ASSESSED_WASH, 5.85, 8.06, 4.5",
        "ZONE, VIEW, 6.09, 8.22, 4.5",
        "ZONE, FLOOR, 7.18, 5.34, 4.5",
        "MUTED, TRACK, 5.79, 5.93, 4.5",
        "LINES, PANEL, 4.38, 5.01, 3",
        "LINES, RAISED, 4.67, 4.39, 3",
        "LINES, SURFACE, 3.84, 5.56, 3",
        "FOCUS, PANEL, 6.66, 8.30, 3",
        "FOCUS, VIEW, 5.66, 8.84, 3",
        "FOCUS, SURFACE, 5.83, 9.22, 3",
        "FENCE, PANEL, 15.51, 14.23, 3",
        "FENCE, VIEW, 13.17, 15.16, 3",
        "FENCE, FLOOR, 15.52, 9.85, 3",
        "BAR, TRACK, 3.25, 4.62, 3",
        "BAR, PANEL, 3.93, 6.21, 3",
        "CLOSE, TRACK, 4.91, 6.74, 3",
        "BROKEN, TRACK, 6.25, 5.57, 3",
        "NOT_ASSESSED, PANEL, 6.97, 9.62, 3",
        "ZONE, FLOOR, 7.18, 5.34, 3",
        "ZONE, VIEW, 6.09, 8.22, 3",
        "ACCENT, FLOOR, 6.66, 5.75, 3",
        "ACCENT, VIEW, 5.66, 8.84, 3",
        "ACCENT, SIDE_WALL, 5.94, 7.20, 3",
        "CENTRE_OF_MASS, FLOOR, 15.52, 9.85, 3",
        "POWER, SIDE_WALL, 9.42, 6.52, 3",
        "SIGNAL, SIDE_WALL, 5.93, 7.44, 3",
        "RADIO, SIDE_WALL, 7.37, 6.69, 3",
        "FIBRE, SIDE_WALL, 3.84, 8.33, 3",
        "EARTH, SIDE_WALL, 6.87, 7.66, 3",
        "POWER, FLOOR, 10.56, 5.20, 3",
        "SIGNAL, FLOOR, 6.65, 5.94, 3",
        "RADIO, FLOOR, 8.26, 5.34, 3",
        "FIBRE, FLOOR, 4.31, 6.65, 3",
        "EARTH, FLOOR, 7.70, 6.11, 3",
        "MET, RAISED, 6.69, 7.81, 3"
    })
    void contrastIsAsPromised(Role role, Role on, double light, double dark, double need) {
        double onLight = Contrast.of(role.colour(), on.colour());
        double onDark = Contrast.of(role.colour(Ground.DARK), on.colour(Ground.DARK));

        assertThat(onLight).isCloseTo(light, within(0.011)).isGreaterThanOrEqualTo(need);
        assertThat(onDark).isCloseTo(dark, within(0.011)).isGreaterThanOrEqualTo(need);
    }
}
