package org.shelterwright.app.desk.ledger;

import java.util.function.DoubleSupplier;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.style.Theme;

/** One line of the ledger column in its list. */
final class LineCell extends ListCell<Line> {
    private final Theme theme;
    private final DoubleSupplier closeShare;
    private final Label left = new Label();
    private final Label right = new Label();
    private final HBox words = new HBox(8, left, right);
    private @Nullable RowPane pane;

    LineCell(Theme theme, DoubleSupplier closeShare) {
        this.theme = theme;
        this.closeShare = closeShare;
        right.getStyleClass().add("caption");
        words.setAlignment(Pos.BOTTOM_LEFT);
        words.setPadding(new Insets(0, 18, 6, 18));
        getStyleClass().add("ledger-cell");
        setPrefWidth(0);
    }

    @Override
    protected void updateItem(Line line, boolean empty) {
        super.updateItem(line, empty);
        if (empty || line == null) {
            setGraphic(null);
            setAccessibleText(null);
        } else if (line instanceof Line.Entry entry) {
            show(entry);
        } else if (line instanceof Line.Heading heading) {
            words(heading.subject().title(), heading.counts(), "strong");
        } else if (line instanceof Line.More more) {
            words(more.rows() + " more are met with more to spare", "Enter: show", "second");
        }
    }

    private void show(Line.Entry entry) {
        RowPane shown = pane;
        if (shown == null) {
            shown = new RowPane(theme, entry);
            pane = shown;
        }
        shown.show(entry, closeShare.getAsDouble());
        setGraphic(shown);
        setAccessibleText(entry.spoken());
    }

    private void words(String name, String more, String style) {
        left.setText(name);
        left.getStyleClass().setAll("label", style);
        right.setText(more);
        setGraphic(words);
        setAccessibleText(name + ", " + more);
    }
}
