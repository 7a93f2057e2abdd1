package org.shelterwright.app.desk.window;

import javafx.scene.layout.BorderPane;
import org.shelterwright.app.desk.bolt.BoltPart;
import org.shelterwright.app.desk.style.Theme;

/** The page of the assembler: the steps, the body as far as it is fitted out with the order below it, the step in full. */
final class BoltDownPage {
    private final Columns columns;

    BoltDownPage(BoltPart bolt, Theme theme) {
        BorderPane centre = new BorderPane(bolt.middle());
        centre.setBottom(bolt.strip());
        bolt.middle().getStyleClass().add("middle");
        bolt.strip().getStyleClass().add("strip");
        centre.setMinWidth(0);
        columns = new Columns(bolt.steps(), centre, bolt.card(), theme);
    }

    Columns node() {
        return columns;
    }
}
