package org.shelterwright.app.desk.window;

import java.util.LinkedHashMap;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/** The line at the foot: short facts, each with its name. */
final class StatusLine extends FlowPane {
    private final Map<String, Label> facts = new LinkedHashMap<>();

    StatusLine() {
        super(20, 2);
        setAlignment(Pos.CENTER_LEFT);
        getStyleClass().add("status");
        setMinWidth(0);
    }

    /** Shows a fact; one that is empty takes no place. */
    void show(String name, String value) {
        Label label = facts.computeIfAbsent(name, this::add);
        label.setText(value);
        Region both = (Region) label.getParent();
        both.setVisible(!value.isEmpty());
        both.setManaged(!value.isEmpty());
    }

    private Label add(String name) {
        Label caption = new Label(name);
        caption.getStyleClass().add("caption");
        caption.setMinWidth(USE_PREF_SIZE);
        Label value = new Label();
        value.getStyleClass().add("figure");
        HBox both = new HBox(6, caption, value);
        both.setAlignment(Pos.CENTER_LEFT);
        getChildren().add(both);
        return value;
    }
}
