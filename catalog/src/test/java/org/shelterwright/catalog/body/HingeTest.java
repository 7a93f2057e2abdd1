package org.shelterwright.catalog.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;

class HingeTest {
    private static final Box AREA = Box.ofMm(0, 0, 0, 0, 800, 1900);
    private static final Box SWEEP = Box.ofMm(600, 0, 0, 1200, 600, 1800);

    @Test
    void aLeafHangsAtASideOfItsOpening() {
        assertThat(new Opening("door", Opening.Kind.DOOR, Face.REAR, AREA, true, null, Face.LEFT).hinge())
                .isEqualTo(Face.LEFT);
        assertThat(new Opening("door", Opening.Kind.DOOR, Face.REAR, AREA, true, null).hinge())
                .isNull();
        assertThatThrownBy(() -> new Opening("door", Opening.Kind.DOOR, Face.REAR, AREA, true, null, Face.FRONT))
                .hasMessage("The hinge of opening \"door\" must be at a side of it, not in front of it or behind it.");
    }

    @Test
    void whatSlidesHasNoHinge() {
        assertThat(new MovablePart("door", MovablePart.Kind.DOOR, SWEEP, "latch", Face.RIGHT).hinge())
                .isEqualTo(Face.RIGHT);
        assertThatThrownBy(() -> new MovablePart("drawer", MovablePart.Kind.DRAWER, SWEEP, "latch", Face.RIGHT))
                .hasMessage("\"drawer\" slides, and so has no hinge.");
    }
}
