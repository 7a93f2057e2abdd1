package org.shelterwright.app.desk.twin;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.session.Session;

/** The table of units, with the shared selection. */
public final class TwinPart {
    private final Session session;
    private final TableView<TwinRow> table = new TableView<>();
    private boolean following;

    public TwinPart(Session session) {
        this.session = session;
        table.setAccessibleText("Table of units");
        table.setPlaceholder(new Label("The brief asks for no units."));
        table.getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
        table.setColumnResizePolicy(TableView.UNCONSTRAINED_RESIZE_POLICY);
        column("Unit", 150, false, TwinRow::name);
        column("Item", 190, false, TwinRow::item);
        column("Surface", 120, false, TwinRow::surface);
        column("x, mm", 80, true, TwinRow::x);
        column("y, mm", 80, true, TwinRow::y);
        column("z, mm", 80, true, TwinRow::z);
        column("Turn", 60, true, TwinRow::turn);
        column("Mass, kg", 80, true, TwinRow::mass);
        column("Findings", 180, false, TwinRow::findings);
        table.setRowFactory(view -> new Spoken());
        table.getSelectionModel().getSelectedItems().addListener((ListChangeListener<TwinRow>) change -> share());
        session.standing().addListener((observable, before, now) -> show());
        session.situation().addListener((observable, before, now) -> show());
        session.selection().units().addListener((observable, before, now) -> follow());
        show();
    }

    public Region node() {
        return table;
    }

    private void column(String title, double width, boolean figure, Function<TwinRow, String> text) {
        TableColumn<TwinRow, String> column = new TableColumn<>(title);
        column.setPrefWidth(width);
        column.setSortable(false);
        column.setReorderable(false);
        column.setCellValueFactory(cell -> new ReadOnlyStringWrapper(text.apply(cell.getValue())));
        if (figure) {
            column.getStyleClass().add("figures");
            column.setStyle("-fx-alignment: " + Pos.CENTER_RIGHT.name().replace('_', '-') + ";");
        }
        table.getColumns().add(column);
    }

    /** Takes over what changed; rows that say the same stay, so that nobody loses their place. */
    private void show() {
        List<TwinRow> rows = TwinRow.of(session.now(), session.situation().get());
        following = true;
        if (table.getItems().size() == rows.size()) {
            for (int i = 0; i < rows.size(); i++) {
                if (!table.getItems().get(i).equals(rows.get(i))) {
                    table.getItems().set(i, rows.get(i));
                }
            }
        } else {
            table.getItems().setAll(rows);
        }
        following = false;
        follow();
    }

    private void follow() {
        if (following) {
            return;
        }
        following = true;
        Set<String> chosen = session.selection().units().get();
        if (!chosen.equals(selected())) {
            table.getSelectionModel().clearSelection();
            for (int i = 0; i < table.getItems().size(); i++) {
                if (chosen.contains(table.getItems().get(i).unit())) {
                    table.getSelectionModel().select(i);
                }
            }
        }
        following = false;
    }

    private void share() {
        if (!following) {
            following = true;
            session.selection().set(selected());
            following = false;
        }
    }

    private Set<String> selected() {
        Set<String> units = new LinkedHashSet<>();
        for (TwinRow row : table.getSelectionModel().getSelectedItems()) {
            if (row != null) {
                units.add(row.unit());
            }
        }
        return units;
    }

    /** A row that says itself as a sentence. */
    private static final class Spoken extends TableRow<TwinRow> {
        @Override
        protected void updateItem(@Nullable TwinRow row, boolean empty) {
            super.updateItem(row, empty);
            setAccessibleText(row == null || empty ? "" : row.sentence());
        }
    }
}
