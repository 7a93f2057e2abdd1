package org.shelterwright.app.desk.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.desk.hand.HandPost;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

class MountChoiceTest {
    private final Scene scene = Checker.standard().scene(HandPost.layout());

    @Test
    void whatAnItemIsMeantForStandsFirstAndTheRestSaysThatItIsNot() {
        PlacedUnit screen = scene.unit("screen-1").orElseThrow();

        List<MountChoice> all = MountChoice.all(scene, screen, Situation.ON_STATION);

        assertThat(all.get(0).toString()).isEqualTo("On Desk");
        assertThat(all)
                .extracting(MountChoice::toString)
                .contains("The floor (not meant for it)", "The roof (not meant for it)");
        assertThat(all).contains(MountChoice.of(scene, screen, Situation.ON_STATION));
        assertThat(all.stream().map(MountChoice::meant).toList())
                .as("first those that are meant")
                .isSortedAccordingTo((a, b) -> Boolean.compare(b, a));
    }
}
