package org.shelterwright.app.look;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.app.drawing.Colour;

/** The tints and their least contrast with edges and labels, by the formula of WCAG 2.2, relative luminance. */
class TintTest {

    @ParameterizedTest
    @CsvSource({
        "STEEL, CDD6D9, 9DA9AE, 6.3, 12.1",
        "ALUMINIUM, E4E9E9, B9C0C0, 8.2, 14.6",
        "TIMBER, E4D8BE, B9AC8E, 6.7, 12.6",
        "PAINT, C3D1CA, 91A49D, 5.8, 11.3",
        "ENAMEL, F2F2EF, C9CCC8, 9.3, 15.9",
        "PLY, DCCBAE, AF9D7C, 5.7, 11.2",
        "RUBBER, ADB4B6, 778284, 3.8, 8.5",
        "FABRIC, CACCB8, 9A9E87, 5.5, 10.9"
    })
    void tintsAreMixedAndContrastAsTheLookSays(Tint tint, String top, String end, double edge, double label) {
        assertThat(near(tint.top(), top)).isTrue();
        assertThat(near(tint.end(), end)).isTrue();
        assertThat(contrast(Role.EDGE.colour(), tint.end()))
                .isGreaterThan(edge - 0.06)
                .isGreaterThan(3);
        assertThat(contrast(Role.ON_TOP.colour(), tint.top()))
                .isGreaterThan(label - 0.06)
                .isGreaterThan(4.5);
    }

    /** Within one step of each channel: mixing may round either way. */
    private static boolean near(Colour colour, String hex) {
        int other = Integer.parseInt(hex, 16);
        for (int shift = 16; shift >= 0; shift -= 8) {
            if (Math.abs((colour.rgb() >> shift & 0xFF) - (other >> shift & 0xFF)) > 1) {
                return false;
            }
        }
        return true;
    }

    private static double contrast(Colour a, Colour b) {
        double la = luminance(a);
        double lb = luminance(b);
        return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
    }

    private static double luminance(Colour colour) {
        return 0.2126 * channel(colour, 16) + 0.7152 * channel(colour, 8) + 0.0722 * channel(colour, 0);
    }

    private static double channel(Colour colour, int shift) {
        double value = (colour.rgb() >> shift & 0xFF) / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}
