package org.shelterwright.app.desk.window;

import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.style.Theme;

/** The page of the integration engineer: equipment and the selected unit, the view with the search below it, the ledger. */
final class FitOutPage {
    private static final double UNIT_SHARE = 0.55;

    private final Columns columns;

    /**
     * @param list equipment list
     * @param unit the selected unit; takes what it needs below the list
     * @param middle the view
     * @param strip below the view
     */
    FitOutPage(Region list, Region unit, Region middle, Region strip, Region ledger, Theme theme) {
        VBox.setVgrow(list, Priority.ALWAYS);
        list.setMinHeight(80);
        VBox left = new VBox(list, unit);
        unit.maxHeightProperty().bind(left.heightProperty().multiply(UNIT_SHARE));
        BorderPane centre = new BorderPane(middle);
        centre.setBottom(strip);
        middle.getStyleClass().add("middle");
        strip.getStyleClass().add("strip");
        centre.setMinWidth(0);
        columns = new Columns(left, centre, ledger, theme);
    }

    Columns node() {
        return columns;
    }
}
