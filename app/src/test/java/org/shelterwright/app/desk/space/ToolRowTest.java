package org.shelterwright.app.desk.space;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.desk.WindowTest;
import org.shelterwright.app.desk.menu.ToolButton;
import org.shelterwright.app.desk.style.Icon;

class ToolRowTest extends WindowTest {
    private static final double ENOUGH = 720;

    @Test
    void chipsForWhichTheRowHasNoRoomGiveWayToOneButtonThatIsMarkedWhileOneOfThemIsChosen() {
        onDesk(() -> {
            List<ToggleButton> chips = Stream.of("Clear zones", "Swings", "Centre of mass", "Floor load", "Walkways")
                    .map(ToggleButton::new)
                    .toList();
            ToolButton more = new ToolButton("More to lay over the view", Icon.OVERLAYS);
            ToolRow row = new ToolRow(List.of(new Button("On station")), chips, more);
            new Scene(row);
            row.applyCss();

            lay(row, ENOUGH);
            assertThat(chips).allMatch(ToggleButton::isVisible);
            assertThat(more.isVisible()).isFalse();
            assertThat(row.prefHeight(ENOUGH))
                    .as("one row")
                    .isLessThan(2 * chips.get(0).prefHeight(-1));

            lay(row, ENOUGH / 2);
            assertThat(chips.get(0).isVisible()).isTrue();
            assertThat(chips.get(4).isVisible()).isFalse();
            assertThat(more.isVisible()).isTrue();
            assertThat(more.getBoundsInParent().getMaxX()).isLessThanOrEqualTo(ENOUGH / 2);
            assertThat(more.getStyleClass()).doesNotContain("on");

            chips.get(4).setSelected(true);
            lay(row, ENOUGH / 2);
            assertThat(more.getStyleClass()).contains("on");
            return null;
        });
    }

    private static void lay(ToolRow row, double width) {
        row.resize(width, 40);
        row.layout();
    }
}
