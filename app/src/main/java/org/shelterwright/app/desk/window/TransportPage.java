package org.shelterwright.app.desk.window;

import javafx.scene.layout.BorderPane;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.desk.transport.JourneyPart;

/** The page of the logistics planner: legs and what goes, the car with what it bears and the search below it, the leg's ledger. */
final class TransportPage {
    private final Columns columns;

    /** @param like columns of another page, with which these share their widths */
    TransportPage(JourneyPart journey, Columns like, Theme theme) {
        BorderPane centre = new BorderPane(journey.middle());
        centre.setBottom(journey.strip());
        journey.middle().getStyleClass().add("middle");
        journey.strip().getStyleClass().add("strip");
        centre.setMinWidth(0);
        columns = new Columns(journey.left(), centre, journey.ledger(), theme);
        columns.leftWidth().bindBidirectional(like.leftWidth());
        columns.rightWidth().bindBidirectional(like.rightWidth());
    }

    Columns node() {
        return columns;
    }
}
