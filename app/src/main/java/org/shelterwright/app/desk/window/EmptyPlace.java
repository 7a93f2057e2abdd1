package org.shelterwright.app.desk.window;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;

/** Where a part will stand that is not there yet; it says so. */
final class EmptyPlace extends StackPane {
    EmptyPlace(String name, String sentence) {
        setId(name);
        Label words = new Label(sentence);
        words.getStyleClass().add("caption");
        words.setWrapText(true);
        getChildren().add(words);
        setAlignment(Pos.CENTER);
        setMinSize(0, 0);
    }
}
