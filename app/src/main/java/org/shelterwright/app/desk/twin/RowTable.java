package org.shelterwright.app.desk.twin;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.style.Theme;

/**
 * A table beside a view, for keyboard and screen reader: every row says itself as a sentence, and the chosen rows can be kept the
 * same as what is chosen elsewhere.
 *
 * @param <T> a row; rows that say the same are equal
 */
public final class RowTable<T> {
    private final TableView<T> table = new TableView<>();
    private Runnable follow = () -> {};
    private boolean following;

    /**
     * Makes a table without columns.
     *
     * @param name for a screen reader
     * @param none what stands there without rows
     */
    public RowTable(String name, String none, Function<T, String> sentence) {
        table.setAccessibleText(name);
        table.setPlaceholder(new Label(none));
        table.getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
        table.setRowFactory(view -> new Spoken<>(sentence));
    }

    public TableView<T> node() {
        return table;
    }

    /** Adds a column; figures stand at its right. */
    public RowTable<T> column(String title, double width, boolean figure, Function<T, String> text) {
        TableColumn<T, String> column = new TableColumn<>(title);
        column.setPrefWidth(width);
        column.setSortable(false);
        column.setReorderable(false);
        column.setCellValueFactory(cell -> new ReadOnlyStringWrapper(text.apply(cell.getValue())));
        if (figure) {
            column.getStyleClass().add("figures");
            column.setStyle("-fx-alignment: " + Pos.CENTER_RIGHT.name().replace('_', '-') + ";");
        }
        table.getColumns().add(column);
        return this;
    }

    /** Lets the columns grow with the text. */
    public RowTable<T> growing(Theme theme) {
        List<Double> widths =
                table.getColumns().stream().map(TableColumn::getPrefWidth).toList();
        Runnable grow = () -> {
            for (int i = 0; i < widths.size(); i++) {
                table.getColumns().get(i).setPrefWidth(theme.sized(widths.get(i)));
            }
        };
        theme.onChange(grow);
        grow.run();
        return this;
    }

    /** Keeps the chosen rows the same as a set of ids that others may change. */
    public void share(Function<T, String> id, ObservableValue<Set<String>> chosen, Consumer<Set<String>> choose) {
        follow = () -> follow(id, chosen.getValue());
        chosen.addListener((observable, before, now) -> follow.run());
        table.getSelectionModel().getSelectedItems().addListener((ListChangeListener<T>) change -> {
            if (!following) {
                following = true;
                choose.accept(ids(id));
                following = false;
            }
        });
    }

    /** Takes over what changed; rows that say the same stay, so that nobody loses their place. */
    public void show(List<T> rows) {
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
        follow.run();
    }

    /** The chosen rows. */
    public List<T> chosen() {
        return table.getSelectionModel().getSelectedItems();
    }

    private void follow(Function<T, String> id, Set<String> chosen) {
        if (following || chosen.equals(ids(id))) {
            return;
        }
        following = true;
        table.getSelectionModel().clearSelection();
        int first = -1;
        for (int i = table.getItems().size() - 1; i >= 0; i--) {
            if (chosen.contains(id.apply(table.getItems().get(i)))) {
                table.getSelectionModel().select(i);
                first = i;
            }
        }
        if (first >= 0) {
            table.scrollTo(Math.max(0, first - 1));
        }
        following = false;
    }

    private Set<String> ids(Function<T, String> id) {
        Set<String> ids = new LinkedHashSet<>();
        for (T row : chosen()) {
            if (row != null) {
                ids.add(id.apply(row));
            }
        }
        return ids;
    }

    private static final class Spoken<T> extends TableRow<T> {
        private final Function<T, String> sentence;

        Spoken(Function<T, String> sentence) {
            this.sentence = sentence;
        }

        @Override
        protected void updateItem(@Nullable T row, boolean empty) {
            super.updateItem(row, empty);
            setAccessibleText(row == null || empty ? "" : sentence.apply(row));
        }
    }
}
