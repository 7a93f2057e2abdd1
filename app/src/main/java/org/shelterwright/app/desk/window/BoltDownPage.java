package org.shelterwright.app.desk.window;

import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import org.shelterwright.app.desk.bolt.BoltPart;
import org.shelterwright.app.desk.style.Theme;

/** The page of the assembler: the steps, the body as far as it is fitted out with the order below it, the step in full. */
final class BoltDownPage {
    private final Columns columns;

    /** @param like columns of another page, with which these share their widths */
    BoltDownPage(BoltPart bolt, Columns like, Theme theme) {
        Region middle = bolt.middle();
        Region strip = bolt.strip();
        BorderPane centre = new BorderPane(middle);
        centre.setBottom(strip);
        middle.getStyleClass().add("middle");
        strip.getStyleClass().add("strip");
        centre.setMinWidth(0);
        columns = new Columns(bolt.steps(), centre, bolt.card(), theme);
        columns.leftWidth().bindBidirectional(like.leftWidth());
        columns.rightWidth().bindBidirectional(like.rightWidth());
    }

    Columns node() {
        return columns;
    }
}
