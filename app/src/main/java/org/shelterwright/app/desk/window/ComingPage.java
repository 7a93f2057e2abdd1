package org.shelterwright.app.desk.window;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextAlignment;

/** A page that is not there yet and says so. */
final class ComingPage extends VBox {
    ComingPage(Page page) {
        super(8);
        setAlignment(Pos.CENTER);
        getStyleClass().add("middle");
        Label title = new Label(page.title());
        title.getStyleClass().add("title");
        Label sentence = new Label(page.coming());
        sentence.getStyleClass().add("second");
        sentence.setWrapText(true);
        sentence.setMaxWidth(520);
        sentence.setTextAlignment(TextAlignment.CENTER);
        getChildren().addAll(title, sentence);
    }
}
