package org.shelterwright.app.desk.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.study.StudyColumn;
import org.shelterwright.layouts.study.results.RunResult;

/** The runs as a table; a click on a head orders by it. */
final class RunTable {
    private final RunBoard board;
    private final TableView<RunResult> table = new TableView<>();
    private boolean following;

    RunTable(RunBoard board) {
        this.board = board;
        table.setId("study-runs");
        table.setAccessibleText("Table of runs");
        table.setPlaceholder(new Label("No run is shown. Tick more boxes at the left."));
        table.getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
        table.setColumnResizePolicy(TableView.UNCONSTRAINED_RESIZE_POLICY);
        board.columns().forEach(this::column);
        table.setSortPolicy(view -> {
            order();
            return true;
        });
        table.getSelectionModel().getSelectedItems().addListener((ListChangeListener<RunResult>) change -> share());
        board.filter().addListener((observable, before, now) -> show());
        board.chosen().addListener((observable, before, now) -> follow());
        show();
    }

    Region node() {
        return table;
    }

    private void column(StudyColumn column) {
        TableColumn<RunResult, String> head = new TableColumn<>(column.head());
        head.setId(column.id());
        head.setPrefWidth(
                Math.max(column.figures() ? 84 : 124, 28 + 8.2 * column.head().length()));
        head.setReorderable(false);
        head.setCellValueFactory(
                cell -> new ReadOnlyStringWrapper(text(column.cell().apply(cell.getValue()))));
        if (column.figures()) {
            head.getStyleClass().add("figures");
            head.setStyle("-fx-alignment: CENTER-RIGHT;");
        }
        table.getColumns().add(head);
    }

    private static String text(@Nullable Object value) {
        if (value == null) {
            return "";
        }
        return value instanceof Double figure ? Numerals.short3(figure) : Objects.toString(value);
    }

    private void order() {
        List<TableColumn<RunResult, ?>> heads = table.getSortOrder();
        if (!heads.isEmpty()) {
            board.order(heads.get(0).getId(), heads.get(0).getSortType() == TableColumn.SortType.DESCENDING);
        }
    }

    private void show() {
        List<RunResult> shown = board.shown();
        if (!table.getItems().equals(shown)) {
            following = true;
            table.getItems().setAll(shown);
            following = false;
            follow();
        }
    }

    /** Runs that are chosen and not shown stay chosen. */
    private void share() {
        if (!following) {
            following = true;
            List<RunResult> shown = table.getItems();
            List<Integer> hidden = board.chosen().get().stream()
                    .filter(run -> shown.stream().noneMatch(one -> one.run() == run))
                    .toList();
            List<Integer> runs = new ArrayList<>(hidden);
            table.getSelectionModel().getSelectedItems().stream()
                    .filter(Objects::nonNull)
                    .forEach(run -> runs.add(run.run()));
            board.choose(runs);
            following = false;
        }
    }

    private void follow() {
        if (following) {
            return;
        }
        following = true;
        table.getSelectionModel().clearSelection();
        for (int i = 0; i < table.getItems().size(); i++) {
            if (board.chosen().get().contains(table.getItems().get(i).run())) {
                table.getSelectionModel().select(i);
            }
        }
        following = false;
    }
}
