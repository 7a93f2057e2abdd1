package org.shelterwright.app.desk.window;

import java.util.LinkedHashMap;
import java.util.Map;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Sentences above the page that stay until they are answered or no longer hold. */
final class Notices extends VBox {
    private final Map<String, Node> shown = new LinkedHashMap<>();

    /** Shows a sentence that needs no answer. */
    void tell(String sentence) {
        show("told", sentence, Map.of("Good", () -> {}));
    }

    /** Offers something that may be declined. */
    void offer(String sentence, String order, Runnable action) {
        Map<String, Runnable> answers = new LinkedHashMap<>();
        answers.put(order, action);
        answers.put("Not now", () -> {});
        show("offer", sentence, answers);
    }

    /**
     * Shows a sentence, in the place of an earlier one of the same key.
     *
     * @param answers what can be done about it; the notice goes away with any of them
     */
    void show(String key, String sentence, Map<String, Runnable> answers) {
        hide(key);
        Label words = new Label(sentence);
        words.setWrapText(true);
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        HBox line = new HBox(12, words);
        line.setAlignment(Pos.CENTER_LEFT);
        line.getStyleClass().add("notice");
        answers.forEach((order, action) -> {
            Button button = new Button(order);
            button.setMinWidth(USE_PREF_SIZE);
            button.setOnAction(event -> {
                hide(key);
                action.run();
            });
            line.getChildren().add(button);
        });
        VBox.setMargin(line, new Insets(6, 12, 6, 12));
        shown.put(key, line);
        getChildren().add(line);
    }

    void hide(String key) {
        Node line = shown.remove(key);
        if (line != null) {
            getChildren().remove(line);
        }
    }
}
