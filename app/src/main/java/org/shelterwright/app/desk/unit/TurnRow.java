package org.shelterwright.app.desk.unit;

import java.util.EnumMap;
import java.util.Map;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.shelterwright.catalog.space.QuarterTurn;

/** The four turns, the present one chosen. */
final class TurnRow {
    private final UnitSheet sheet;
    private final Map<QuarterTurn, ToggleButton> turns = new EnumMap<>(QuarterTurn.class);
    private final HBox node;

    TurnRow(UnitSheet sheet, OrderButtons buttons) {
        this.sheet = sheet;
        HBox cells = new HBox(2);
        for (QuarterTurn turn : QuarterTurn.values()) {
            ToggleButton button = new ToggleButton(turn.degrees() + "\u00b0");
            button.setId("unit-turn-" + turn.degrees());
            button.setAccessibleText("Turned by " + turn.degrees() + " degrees");
            button.setStyle("-fx-padding: 4 0 4 0;");
            button.setMaxWidth(Double.MAX_VALUE);
            button.setMinWidth(38);
            button.setOnAction(event -> {
                sheet.setTurn(turn);
                show();
            });
            HBox.setHgrow(button, Priority.ALWAYS);
            turns.put(turn, button);
            cells.getChildren().add(button);
        }
        HBox.setHgrow(cells, Priority.ALWAYS);
        node = UnitPart.row("turn", cells, buttons.pin("edit.pin-turn", null));
    }

    Region node() {
        return node;
    }

    void show() {
        turns.forEach((turn, button) ->
                button.setSelected(sheet.turn().filter(now -> now == turn).isPresent()));
    }
}
