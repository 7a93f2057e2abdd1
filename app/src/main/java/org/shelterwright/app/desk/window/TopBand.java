package org.shelterwright.app.desk.window;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;
import org.shelterwright.app.desk.menu.CommandList;
import org.shelterwright.app.desk.menu.Reach;
import org.shelterwright.app.desk.menu.ToolButton;

/** The band at the top: mark, name and state of the layout, the page line, the command field and a few orders. */
final class TopBand extends HBox {
    private final Label name = new Label();
    private final Label saved = new Label();

    /** Commands of the list below the name, which says where files and help are to be had by the pointer. */
    private static final List<String> LIST = List.of(
            "file.new",
            "file.open",
            "file.recent",
            "study.open",
            CommandList.LINE,
            "file.save",
            "file.save-as",
            "file.documents",
            CommandList.LINE,
            "desk.history",
            "look.ground",
            "look.larger",
            "look.smaller",
            CommandList.LINE,
            "desk.first-steps",
            "desk.keys",
            "desk.close");

    TopBand(PageLine pages, Reach reach, Node commandField, Node... orders) {
        super(12);
        setAlignment(Pos.CENTER_LEFT);
        getStyleClass().add("top-band");
        name.getStyleClass().add("title");
        saved.getStyleClass().add("second");
        VBox words = new VBox(name, saved);
        words.setAlignment(Pos.CENTER_LEFT);
        words.setMinWidth(0);
        HBox title = new HBox(12, mark(), words);
        title.setAlignment(Pos.CENTER_LEFT);
        ToolButton files = new ToolButton("Files, look and help", title, "title-button");
        files.setId("files");
        files.setMinWidth(0);
        CommandList.under(files, reach, LIST);
        HBox left = new HBox(files);
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
