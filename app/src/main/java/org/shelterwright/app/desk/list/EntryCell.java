package org.shelterwright.app.desk.list;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.hand.Carry;
import org.shelterwright.app.desk.hand.Held;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.Icon;

/** Draws one line of the equipment list. A unit can be drawn from it into a view, placed or not. */
final class EntryCell extends ListCell<Entry> implements Held {
    private final Label name = new Label();
    private final Label figure = new Label();
    private final Region gap = new Region();
    private final HBox line = new HBox(8);

    EntryCell() {
        HBox.setHgrow(gap, Priority.ALWAYS);
        name.setMinWidth(0);
        line.setAlignment(Pos.CENTER_LEFT);
        line.setMaxWidth(Double.MAX_VALUE);
        setPrefWidth(0);
        setOnDragDetected(event -> {
            if (getItem() instanceof Entry.Unit) {
                startFullDrag();
                event.consume();
            }
        });
    }

    @Override
    public Carry take(Session session) {
        return Carry.take(session, ((Entry.Unit) getItem()).id());
    }

    @Override
    protected void updateItem(@Nullable Entry entry, boolean empty) {
        super.updateItem(entry, empty);
        setText(null);
        setGraphic(null);
        if (empty || entry == null) {
            return;
        }
        line.getChildren().clear();
        if (entry instanceof Entry.Heading heading) {
            name.setText(heading.words());
            figure.setText(heading.figure());
            name.getStyleClass().setAll("label", "medium");
            figure.getStyleClass().setAll("label", "second");
            line.getChildren().addAll(name, gap, figure);
            setAccessibleText(heading.words() + ", " + heading.figure());
        } else if (entry instanceof Entry.Unit unit) {
            name.setText(unit.name());
            figure.setText(unit.mass());
            name.getStyleClass().setAll("label");
            figure.getStyleClass().setAll("label", "figure");
            line.getChildren().add((unit.placed() ? Icon.PLACE : Icon.ADD).node(18));
            line.getChildren().addAll(name, gap);
            if (unit.pinned()) {
                line.getChildren().add(Icon.PIN.node(16));
            }
            line.getChildren().add(figure);
            setAccessibleText(unit.name() + ", " + unit.mass() + (unit.placed() ? ", placed" : ", to place")
                    + (unit.pinned() ? ", pinned" : ""));
        }
        setGraphic(line);
    }
}
