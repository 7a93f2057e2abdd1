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
        assertThat(Contrast.of(Role.EDGE.colour(), tint.end()))
                .isGreaterThan(edge - 0.06)
                .isGreaterThan(3);
        assertThat(Contrast.of(Role.ON_TOP.colour(), tint.top()))
                .isGreaterThan(label - 0.06)
                .isGreaterThan(4.5);
    }

    @ParameterizedTest
    @CsvSource({
        "STEEL, A2B0B5, 76858B, 5.2, 8.0, 4.7",
        "ALUMINIUM, B9C2C3, 8B9597, 6.4, 9.8, 5.8",
        "TIMBER, BBA886, 8C7F61, 5.0, 7.7, 4.5",
        "PAINT, 97ADA5, 6D837C, 4.9, 7.5, 4.4",
        "ENAMEL, C8CBC5, 989D99, 7.2, 10.9, 6.5",
        "PLY, B29C79, 847456, 4.3, 6.7, 3.9",
        "RUBBER, 899496, 606C6F, 3.6, 5.7, 3.3",
        "FABRIC, A0A38D, 747A67, 4.4, 6.9, 4.0"
    })
    void onDarkGroundFacesStandOutFromTheGroundAndLabelsFromFaces(
            Tint tint, String top, String end, double edge, double label, double face) {
        assertThat(near(tint.top(Ground.DARK), top)).isTrue();
        assertThat(near(tint.end(Ground.DARK), end)).isTrue();
        assertThat(Contrast.of(Role.EDGE.colour(Ground.DARK), tint.end(Ground.DARK)))
                .isGreaterThan(edge - 0.06)
                .isGreaterThan(3);
        assertThat(Contrast.of(Role.ON_TOP.colour(Ground.DARK), tint.top(Ground.DARK)))
                .isGreaterThan(label - 0.06)
                .isGreaterThan(4.5);
        assertThat(Contrast.of(Role.VIEW.colour(Ground.DARK), tint.end(Ground.DARK)))
                .isGreaterThan(face - 0.06)
                .isGreaterThan(3);
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
}
