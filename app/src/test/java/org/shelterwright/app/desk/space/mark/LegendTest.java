package org.shelterwright.app.desk.space.mark;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Set;
import javafx.geometry.Point3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.type.Typeface;

class LegendTest {
    private final Typeface typeface = new Typeface();

    private Legend legend(double width, double high, double text, Set<Overlay> overlays) {
        return new Legend(new Glass(new Eye(33, 37, Point3D.ZERO, 0.2, false, width, high), text), typeface, overlays);
    }

    @Test
    void zonesAndSwingsAloneNeedNone() {
        assertThat(legend(1000, 700, 1, Set.of(Overlay.CLEAR_ZONES, Overlay.SWINGS))
                        .shown())
                .isFalse();
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 1.5, 2})
    void everyOverlayThatIsShownHasItsWordsInsideTheCard(double text) {
        Legend legend = legend(1400, 900, text, EnumSet.allOf(Overlay.class));

        assertThat(legend.shown()).isTrue();
        for (Overlay overlay : Overlay.values()) {
            assertThat(legend.shapes())
                    .filteredOn(shape -> shape instanceof Label label
                            && label.text().equals(Legend.words(overlay))
                            && legend.bounds().contains(typeface.bounds(label)))
                    .as(overlay.words())
                    .hasSize(1);
        }
    }

    @Test
    void aSmallViewKeepsItsRoom() {
        assertThat(legend(300, 200, 1, EnumSet.allOf(Overlay.class)).shown()).isFalse();
    }
}
