package org.shelterwright.app.desk.item;

import java.util.function.Consumer;
import javafx.scene.control.ChoiceBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/** A choice among constants, in words. */
final class Choice {
    private Choice() {}

    static <E extends Enum<E>> ChoiceBox<E> of(String name, String id, E[] values, E now, Consumer<E> taken) {
        ChoiceBox<E> box = new ChoiceBox<>();
        box.setId(id);
        box.setAccessibleText(name);
        box.setConverter(new StringConverter<>() {
            @Override
            public String toString(@Nullable E value) {
                return value == null ? "" : Line.words(value);
            }

            @Override
            public E fromString(String words) {
                throw new UnsupportedOperationException("Nothing is typed into a choice.");
            }
        });
        box.getItems().setAll(values);
        box.setValue(now);
        box.valueProperty().addListener((observable, before, chosen) -> taken.accept(chosen));
        return box;
    }
}
