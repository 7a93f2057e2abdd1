package org.shelterwright.app.desk.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.entry.Entry;
import org.shelterwright.app.desk.hand.Clearance;

/** Distances of one unit to its neighbours, each of which can be typed. The rows stay while only figures change. */
final class DistanceRows {
    private static final int MOST = 4;
    private static final double FIELD = 100;

    private final UnitSheet sheet;
    private final VBox node = new VBox(6);
    private final List<Entry> entries = new ArrayList<>();
    private final List<Label> names = new ArrayList<>();
    private final List<VBox> rows = new ArrayList<>();
    private List<Clearance> shown = List.of();

    DistanceRows(UnitSheet sheet) {
        this.sheet = sheet;
        Label head = new Label("Distances");
        head.getStyleClass().add("strong");
        node.getChildren().add(head);
        for (int i = 0; i < MOST; i++) {
            int number = i;
            Entry entry = new Entry("distance", text -> set(number, text));
            entry.field().setId("unit-distance-" + i);
            entry.field().setMinWidth(FIELD);
            entry.field().setMaxWidth(FIELD);
            Label name = new Label();
            name.getStyleClass().add("second");
            name.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(name, Priority.ALWAYS);
            HBox row = new HBox(8, entry.field(), name);
            row.setAlignment(Pos.CENTER_LEFT);
            entries.add(entry);
            names.add(name);
            VBox both = new VBox(3, row, entry.below());
            rows.add(both);
            node.getChildren().add(both);
        }
    }

    Region node() {
        return node;
    }

    void show() {
        shown = sheet.distances();
        for (int i = 0; i < MOST; i++) {
            boolean used = i < shown.size();
            rows.get(i).setVisible(used);
            rows.get(i).setManaged(used);
            if (used) {
                Clearance one = shown.get(i);
                names.get(i).setText("to " + one.name());
                entries.get(i).field().setAccessibleText("distance to " + one.name());
                entries.get(i).show(sheet.unit().get().format(one.length()));
            }
        }
        node.setVisible(!shown.isEmpty());
        node.setManaged(!shown.isEmpty());
    }

    private Optional<String> set(int number, String text) {
        return number < shown.size() ? sheet.setDistance(shown.get(number), text) : Optional.empty();
    }
}
