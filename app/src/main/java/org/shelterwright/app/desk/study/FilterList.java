package org.shelterwright.app.desk.study;

import javafx.geometry.Insets;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.shelterwright.app.study.RunFilter;
import org.shelterwright.layouts.study.Setting;
import org.shelterwright.layouts.study.StudyAxis;

/** Boxes to tick: which settings of each axis, and which verdicts, are shown. */
final class FilterList {
    private final ScrollPane scroll;

    FilterList(RunBoard board) {
        VBox list = new VBox(4);
        list.setPadding(new Insets(12, 14, 12, 14));
        for (StudyAxis axis : board.study().study().axes()) {
            list.getChildren().add(head(axis.id()));
            for (Setting setting : axis.settings()) {
                CheckBox box = new CheckBox(setting.id());
                box.setId("study-" + axis.id() + "-" + setting.id());
                box.setSelected(board.shows(axis.id(), setting.id()));
                box.selectedProperty()
                        .addListener((observable, before, now) -> board.show(axis.id(), setting.id(), now));
                list.getChildren().add(box);
            }
        }
        list.getChildren().add(head("verdict"));
        for (String verdict : RunFilter.VERDICTS) {
            CheckBox box = new CheckBox(verdict.replace('-', ' '));
            box.setId("study-verdict-" + verdict);
            box.setSelected(board.shows(verdict));
            box.selectedProperty().addListener((observable, before, now) -> {
                board.show(verdict, now);
                box.setSelected(board.shows(verdict));
            });
            list.getChildren().add(box);
        }
        scroll = new ScrollPane(list);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setMinWidth(Region.USE_PREF_SIZE);
        scroll.setPrefWidth(220);
    }

    Region node() {
        return scroll;
    }

    private static Label head(String text) {
        Label head = new Label(text);
        head.getStyleClass().add("second");
        VBox.setMargin(head, new Insets(8, 0, 0, 0));
        return head;
    }
}
