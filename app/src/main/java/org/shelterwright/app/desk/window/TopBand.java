package org.shelterwright.app.desk.window;

import javafx.geometry.Pos;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;

/** The band at the top: mark, name and state of the layout, the page line, the command field and a few orders. */
final class TopBand extends HBox {
    private final Label name = new Label();
    private final Label saved = new Label();

    TopBand(PageLine pages, Node commandField, Node... orders) {
        super(12);
        setAlignment(Pos.CENTER_LEFT);
        getStyleClass().add("top-band");
        name.getStyleClass().add("title");
        saved.getStyleClass().add("second");
        VBox words = new VBox(name, saved);
        words.setAlignment(Pos.CENTER_LEFT);
        words.setMinWidth(0);
        HBox left = new HBox(12, mark(), words);
        left.setAlignment(Pos.CENTER_LEFT);
        HBox right = new HBox(4, commandField);
        right.getChildren().addAll(orders);
        right.setAlignment(Pos.CENTER_RIGHT);
        for (HBox side : new HBox[] {left, right}) {
            HBox.setHgrow(side, Priority.ALWAYS);
            side.setPrefWidth(320);
            side.setMinWidth(0);
        }
        pages.setMinWidth(USE_PREF_SIZE);
        getChildren().addAll(left, pages, right);
    }

    void show(String layout, String state) {
        name.setText(layout);
        saved.setText(state);
    }

    /** The open door. */
    private static Group mark() {
        SVGPath walls = new SVGPath();
        walls.setContent("M0 0h24v22M14 22H0V0");
        walls.getStyleClass().add("mark");
        SVGPath door = new SVGPath();
        door.setContent("M14 22h10");
        door.getStyleClass().add("mark-door");
        return new Group(walls, door);
    }
}
