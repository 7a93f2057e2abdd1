package org.shelterwright.app.desk.list;

import java.util.function.Predicate;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** From a filter into its list by key: Enter or the arrow down goes to the first line that can be chosen. */
final class FilterKeys {
    private FilterKeys() {}

    static <T> void lead(TextField filter, ListView<T> list, Predicate<? super T> choosable) {
        filter.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() != KeyCode.DOWN && event.getCode() != KeyCode.ENTER) {
                return;
            }
            for (int i = 0; i < list.getItems().size(); i++) {
                if (choosable.test(list.getItems().get(i))) {
                    list.getSelectionModel().clearAndSelect(i);
                    list.getFocusModel().focus(i);
                    list.scrollTo(i);
                    list.requestFocus();
                    event.consume();
                    return;
                }
            }
        });
    }
}
