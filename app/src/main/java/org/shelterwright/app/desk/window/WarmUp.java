package org.shelterwright.app.desk.window;

import java.util.List;
import javafx.scene.Group;
import javafx.scene.Scene;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.style.StyleSheet;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.type.Typeface;

/**
 * Has the toolkit load what every window needs - controls, their skins, the style sheet, the typeface - while the layout is still
 * being read on another thread. Nothing of it is seen.
 */
final class WarmUp {
    private static final int WIDTH = 400;

    private WarmUp() {}

    /** To be called on the thread of the toolkit. */
    static void run() {
        ListView<String> list = new ListView<>();
        list.getItems().setAll(List.of("M"));
        ChoiceBox<String> choice = new ChoiceBox<>();
        choice.getItems().setAll(List.of("M"));
        VBox root = new VBox(
                new Label("M"),
                new Button("M"),
                new ToggleButton("M"),
                new TextField("M"),
                choice,
                list,
                new ScrollPane(new Label("M")),
                new SplitPane(new Group(), new Group()),
                new Canvas(1, 1));
        Scene scene = new Scene(root, WIDTH, WIDTH);
        StyleSheet.dressOnce(scene, new Theme());
        root.applyCss();
        root.layout();
        new Typeface().width("M", 1, Weight.REGULAR);
    }
}
