package org.shelterwright.app.desk.entry;

import java.util.Optional;
import java.util.function.Function;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;

/**
 * A named line of text that is taken over by Enter or by leaving it, and put back by Esc. What is wrong with it stands
 * below it; what was typed stays.
 */
public final class Entry {
    private static final String WRONG = "wrong";
    private static final String DIAMOND = "M6 0L12 6L6 12L0 6ZM3.8 3.8L8.2 8.2M8.2 3.8L3.8 8.2";

    private final TextField field = new TextField();
    private final Label fault = new Label();
    private final HBox faultLine = new HBox(6);
    private final VBox node = new VBox(3);
    private final Function<String, Optional<String>> take;
    private String shown = "";

    /**
     * Makes an entry.
     *
     * @param name what it is, for people who hear the screen
     * @param take takes a text over; gives a sentence if it is wrong
     */
    public Entry(String name, Function<String, Optional<String>> take) {
        this.take = take;
        field.setAccessibleText(name);
        field.setAccessibleRole(AccessibleRole.TEXT_FIELD);
        field.setPrefColumnCount(8);
        field.setOnAction(event -> takeOver());
        field.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ESCAPE
                    && !(field.getText().equals(shown) && fault.getText().isEmpty())) {
                putBack();
                event.consume();
            }
        });
        field.focusedProperty().addListener((observable, before, focused) -> {
            if (!focused && !field.getText().equals(shown)) {
                takeOver();
            } else if (focused) {
                field.selectAll();
            }
        });
        SVGPath sign = new SVGPath();
        sign.setContent(DIAMOND);
        sign.setStyle("-fx-fill: -broken; -fx-stroke: -panel; -fx-stroke-width: 1.4;");
        fault.getStyleClass().addAll("caption", "broken");
        fault.setWrapText(true);
        fault.setMinHeight(Region.USE_PREF_SIZE);
        HBox.setHgrow(fault, Priority.ALWAYS);
        faultLine.setAlignment(Pos.TOP_LEFT);
        HBox.setMargin(sign, new Insets(2, 0, 0, 0));
        faultLine.getChildren().addAll(sign, fault);
        node.getChildren().add(field);
        HBox.setHgrow(node, Priority.ALWAYS);
    }

    public Region node() {
        return node;
    }

    public TextField field() {
        return field;
    }

    /** What is wrong with what was typed; empty if nothing is. */
    public Optional<String> fault() {
        return fault.getText().isEmpty() ? Optional.empty() : Optional.of(fault.getText());
    }

    /** Shows a text, unless something else is being typed or is wrong. */
    public void show(String text) {
        boolean typing = field.isFocused() && !field.getText().equals(shown);
        shown = text;
        if (!typing) {
            putBack();
        }
    }

    /** Says what the field waits for while it is empty. */
    public void prompt(String text) {
        field.setPromptText(text);
    }

    private void takeOver() {
        Optional<String> wrong = take.apply(field.getText());
        if (wrong.isPresent()) {
            say(wrong.get());
        } else {
            putBack();
            if (field.isFocused()) {
                field.selectAll();
            }
        }
    }

    private void putBack() {
        field.setText(shown);
        fault.setText("");
        node.getChildren().remove(faultLine);
        field.getStyleClass().remove(WRONG);
    }

    private void say(String sentence) {
        fault.setText(sentence);
        if (!node.getChildren().contains(faultLine)) {
            node.getChildren().add(faultLine);
            field.getStyleClass().add(WRONG);
        }
        field.setAccessibleHelp(sentence);
    }
}
