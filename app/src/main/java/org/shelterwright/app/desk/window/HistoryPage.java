package org.shelterwright.app.desk.window;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Pane;
import org.shelterwright.layouts.edit.History;

/** Every change by name, done and undone, in order of time. Choosing one goes there. */
final class HistoryPage {
    private final Supplier<History<?>> history;
    private final Runnable undo;
    private final Runnable redo;
    private final ListView<Step> list = new ListView<>();

    /** @param distance steps to undo (below zero) or to do again */
    private record Step(String name, int distance) {}

    HistoryPage(Supplier<History<?>> history, Runnable undo, Runnable redo) {
        this.history = history;
        this.undo = undo;
        this.redo = redo;
        list.setId("history-list");
        list.setCellFactory(view -> new ListCell<>() {
            @Override
            protected void updateItem(Step step, boolean empty) {
                super.updateItem(step, empty);
                setText(empty || step == null ? null : words(step));
            }
        });
    }

    void open(Pane over) {
        list.getItems().setAll(steps(history.get()));
        SheetOver sheet =
                new SheetOver(over, "Changes", "Enter or a click goes to how it was after a change.", list, 360);
        list.setOnMouseClicked(event -> go(sheet));
        list.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ENTER) {
                go(sheet);
                event.consume();
            }
        });
        sheet.open(list);
        int now = history.get().undoNames().size();
        list.getSelectionModel().select(now);
        list.scrollTo(Math.max(0, now - 5));
    }

    private void go(SheetOver sheet) {
        Step chosen = list.getSelectionModel().getSelectedItem();
        sheet.close();
        if (chosen != null) {
            for (int i = 0; i < Math.abs(chosen.distance()); i++) {
                if (chosen.distance() < 0) {
                    undo.run();
                } else {
                    redo.run();
                }
            }
        }
    }

    private static String words(Step step) {
        return step.distance() == 0
                ? step.name() + "  (now)"
                : step.distance() > 0 ? step.name() + "  (undone)" : step.name();
    }

    private static List<Step> steps(History<?> history) {
        List<String> done = new ArrayList<>(history.undoNames());
        Collections.reverse(done);
        List<Step> steps = new ArrayList<>();
        steps.add(new Step("As it was opened", -done.size()));
        for (int i = 0; i < done.size(); i++) {
            steps.add(new Step(done.get(i), i + 1 - done.size()));
        }
        List<String> undone = history.redoNames();
        for (int i = 0; i < undone.size(); i++) {
            steps.add(new Step(undone.get(i), i + 1));
        }
        return steps;
    }
}
