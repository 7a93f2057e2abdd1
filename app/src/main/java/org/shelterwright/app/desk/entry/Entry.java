package org.shelterwright.app.desk.entry;

import java.util.Optional;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;
import org.jspecify.annotations.Nullable;

/**
 * A named line of text that is taken over by Enter or by leaving it, and put back by Esc. What is wrong with it stands
 * below it; what was typed stays.
 */
public final class Entry {
    private static final String WRONG = "wrong";
    private static final String DIAMOND = "M7 0L14 7L7 14L0 7Z";
    private static final String CROSS = "M4.8 4.8L9.2 9.2M9.2 4.8L4.8 9.2";

    private final TextField field = new TextField();
    private final Label fault = new Label();
    private final HBox faultLine = new HBox(6);
    private final VBox below = new VBox();
    private final Function<String, Optional<String>> take;
    private String shown = "";
    private @Nullable String kept;

    /**
     * Makes an entry.
     *
     * @param name what it is, for people who hear the screen
     * @param take takes a text over; gives a sentence if it is wrong
     */
    public Entry(String name, Function<String, Optional<String>> take) {
        this.take = take;
        field.setUserData(this);
        field.setAccessibleText(name);
        field.setAccessibleRole(AccessibleRole.TEXT_FIELD);
        field.setPrefColumnCount(8);
        field.setOnAction(event -> takeOver());
        field.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ESCAPE
                    && !(field.getText().equals(shown) && fault.getText().isEmpty())) {
                putBack();
                if (kept != null) {
                    takeOver();
                }
                event.consume();
            }
        });
        field.focusedProperty().addListener((observable, before, focused) -> {
            if (!focused && !field.getText().strip().equals(kept == null ? shown : kept)) {
                takeOver();
            } else if (focused) {
                field.selectAll();
            }
        });
        fault.getStyleClass().addAll("caption", "broken");
        fault.setWrapText(true);
        fault.setMinHeight(Region.USE_PREF_SIZE);
        HBox.setHgrow(fault, Priority.ALWAYS);
        faultLine.setAlignment(Pos.TOP_LEFT);
        faultLine.getChildren().addAll(sign(), fault);
        HBox.setHgrow(field, Priority.ALWAYS);
    }

    public TextField field() {
        return field;
    }

    /** Whether a control is the field of an entry in which nothing is being typed: then undoing is about the layout. */
    public static boolean isAtRest(Node control) {
        return control.getUserData() instanceof Entry entry
                && entry.field.getText().equals(entry.shown);
    }

    /** A place for what is wrong, without height while nothing is; belongs below the row of the field. */
    public Region below() {
        return below;
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

    /**
     * Shows a text that was taken over although something is wrong with it: Esc then takes over what was right before.
     *
     * @param wrong what is wrong; empty if nothing is
     */
    public void show(String text, Optional<String> wrong) {
        kept = wrong.isPresent() ? text : null;
        if (wrong.isEmpty()) {
            show(text);
        } else if (!field.isFocused() || field.getText().strip().equals(text)) {
            field.setText(text);
            say(wrong.get());
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
        below.getChildren().clear();
        field.getStyleClass().remove(WRONG);
    }

    private void say(String sentence) {
        fault.setText(sentence);
        if (below.getChildren().isEmpty()) {
            below.getChildren().add(faultLine);
            field.getStyleClass().add(WRONG);
        }
        field.setAccessibleHelp(sentence);
    }

    /** The sign of what is broken: a filled diamond with a cross. */
    private static Node sign() {
        SVGPath diamond = new SVGPath();
        diamond.setContent(DIAMOND);
        diamond.setStyle("-fx-fill: -broken;");
        SVGPath cross = new SVGPath();
        cross.setContent(CROSS);
        cross.setStyle("-fx-stroke: -panel; -fx-stroke-width: 1.6; -fx-fill: transparent;");
        return new Group(diamond, cross);
    }
}
