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
import org.shelterwright.app.desk.ask.Notes;

/** Sentences above the page that stay until they are answered or no longer hold. */
final class Notices extends VBox implements Notes {
    private final Map<String, Node> shown = new LinkedHashMap<>();

    /** Offers something that may be declined. */
    void offer(String sentence, String order, Runnable action) {
        Map<String, Runnable> answers = new LinkedHashMap<>();
        answers.put(order, action);
        answers.put("Not now", () -> {});
        show("offer", sentence, answers);
    }

    @Override
    public void show(String key, String sentence, Map<String, Runnable> answers) {
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

    @Override
    public void hide(String key) {
        Node line = shown.remove(key);
        if (line != null) {
            getChildren().remove(line);
        }
    }
}
