package org.shelterwright.app.desk.ledger;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import org.shelterwright.app.desk.style.Sign;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Verdict;

/** How many rows have which verdict; a press shows one kind only, another press all again. */
final class VerdictChips {
    private final FlowPane node = new FlowPane(4, 4);
    private final Map<Verdict, ToggleButton> chips = new EnumMap<>(Verdict.class);

    VerdictChips(Theme theme, Consumer<Verdict> pressed) {
        for (Verdict verdict : Verdict.values()) {
            ToggleButton chip = new ToggleButton("", new Sign(theme, verdict));
            chip.getStyleClass().addAll("verdict-chip", RowPane.style(verdict));
            chip.setOnAction(event -> pressed.accept(verdict));
            chips.put(verdict, chip);
            node.getChildren().add(chip);
        }
    }

    FlowPane node() {
        return node;
    }

    void show(Ledger ledger, Optional<Verdict> only) {
        chips.forEach((verdict, chip) -> {
            long count = ledger.count(verdict);
            boolean chosen = only.equals(Optional.of(verdict));
            chip.setText(count + " " + verdict.word());
            chip.setSelected(chosen);
            chip.setVisible(count > 0 || chosen);
            chip.setManaged(count > 0 || chosen);
            chip.setAccessibleText(
                    count + " " + verdict.word() + (chosen ? ", only these are shown" : ", show only these"));
        });
    }
}
