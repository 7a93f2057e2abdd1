package org.shelterwright.app.desk.window;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.OverrunStyle;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.ask.Questions.Choice;
import org.shelterwright.app.desk.style.Theme;

/** A list to choose one thing from, with what tells it from the others below its name. */
final class ChoiceList {
    private static final double ROW = 46;
    private static final int MOST_ROWS = 8;

    private final ListView<Choice> list = new ListView<>();

    ChoiceList(List<Choice> choices, Theme theme) {
        list.getItems().setAll(choices);
        list.setId("choices");
        list.getStyleClass().add("sheet-over");
        list.setFixedCellSize(theme.sized(ROW));
        list.setPrefHeight(theme.sized(ROW) * Math.min(MOST_ROWS, choices.size()) + 14);
        list.setCellFactory(view -> new Cell());
        list.getSelectionModel().selectFirst();
    }

    Node node() {
        return list;
    }

    /** Index of what is chosen; negative without one. */
    int chosen() {
        return list.getSelectionModel().getSelectedIndex();
    }

    /**
     * @param action what a double click or Enter does
     * @param away what Esc does, which a list keeps for itself otherwise
     */
    void onChosen(Runnable action, Runnable away) {
        list.setOnMouseClicked(event -> {
            if (event.getClickCount() == 2) {
                action.run();
            }
        });
        list.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ENTER) {
                event.consume();
                action.run();
            } else if (event.getCode() == KeyCode.ESCAPE) {
                event.consume();
                away.run();
            }
        });
    }

    private static final class Cell extends ListCell<Choice> {
        private final Label name = new Label();
        private final Label detail = new Label();
        private final VBox both = new VBox(name, detail);

        Cell() {
            detail.getStyleClass().add("second");
            // Of a path the end tells most.
            detail.setTextOverrun(OverrunStyle.LEADING_ELLIPSIS);
            detail.managedProperty().bind(detail.textProperty().isNotEmpty());
            both.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
            setPrefWidth(0);
        }

        @Override
        protected void updateItem(@Nullable Choice choice, boolean empty) {
            super.updateItem(choice, empty);
            setText(null);
            setGraphic(choice == null || empty ? null : both);
            if (choice != null && !empty) {
                name.setText(choice.name());
                detail.setText(choice.detail());
                setAccessibleText(choice.name() + (choice.detail().isEmpty() ? "" : ", " + choice.detail()));
            }
        }
    }
}
