package org.shelterwright.app.desk.window;

import javafx.scene.layout.BorderPane;
import org.shelterwright.app.desk.bolt.BoltPart;
import org.shelterwright.app.desk.style.Theme;

/** The page of the assembler: the steps, the body as far as it is fitted out with the order below it, the step in full. */
final class BoltDownPage {
    private final Columns columns;

    /** @param like columns of another page, with which these share their widths */
    BoltDownPage(BoltPart bolt, Columns like, Theme theme) {
        BorderPane centre = new BorderPane(bolt.middle());
        centre.setBottom(bolt.strip());
        bolt.middle().getStyleClass().add("middle");
        bolt.strip().getStyleClass().add("strip");
        centre.setMinWidth(0);
        columns = new Columns(bolt.steps(), centre, bolt.card(), theme);
        columns.leftWidth().bindBidirectional(like.leftWidth());
        columns.rightWidth().bindBidirectional(like.rightWidth());
    }

    Columns node() {
        return columns;
    }
}
