package org.shelterwright.app.desk.ledger;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.session.Finding;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;

/** A ledger column of what is no layout, such as a leg of a journey: the same lines and card, without acceptances. */
public final class LedgerColumn {
    private final Judged judged;
    private final Supplier<String> title;
    private final VerdictChips chips;
    private final ListView<Line> list = new ListView<>();
    private final FindingCard card;
    private final Label head = new Label();
    private final VBox node;
    private Shown shown = Shown.USUAL;
    private boolean filling;

    /**
     * @param prefix how the ids of its commands begin, with a point at the end
     * @param title what it is the ledger of
     */
    public LedgerColumn(Judged judged, Commands commands, Theme theme, String prefix, Supplier<String> title) {
        this.judged = judged;
        this.title = title;
        chips = new VerdictChips(theme, verdict -> {
            shown = shown.toggled(verdict);
            refresh();
        });
        card = new FindingCard(commands, theme, prefix, false);
        add(commands, prefix);
        node = build(theme);
        judged.onChange(this::refresh);
        refresh();
    }

    public Region node() {
        return node;
    }

    private void add(Commands commands, String prefix) {
        List<String> words = List.of("ledger", "limit");
        commands.add(new Command(
                prefix + "next-finding",
                "Next finding of the journey",
                words,
                List.of(),
                this::none,
                () -> judged.step(1)));
        commands.add(new Command(
                prefix + "previous-finding",
                "Previous finding of the journey",
                words,
                List.of(),
                this::none,
                () -> judged.step(-1)));
        commands.add(new Command(
                prefix + "show-place",
                "Show the place of the finding of the journey",
                words,
                List.of(),
                () -> current().isPresent() ? Optional.empty() : Optional.of("Choose a row of the ledger first."),
                () -> current().ifPresent(judged::show)));
        commands.add(new Command(
                prefix + "go", "Go to the ledger of the journey", words, List.of(), Optional::empty, this::takeFocus));
    }

    private Optional<String> none() {
        boolean any = judged.ledger().rows().stream().anyMatch(row -> row.verdict() != Verdict.MET);
        return any ? Optional.empty() : Optional.of("Every limit of this leg is met with room to spare.");
    }

    private Optional<Row> current() {
        return judged.finding().flatMap(finding -> finding.in(judged.ledger()));
    }

    private void takeFocus() {
        list.requestFocus();
        if (list.getSelectionModel().isEmpty()) {
            list.getSelectionModel().selectFirst();
        }
    }

    private VBox build(Theme theme) {
        head.getStyleClass().add("title");
        HBox gap = new HBox();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox first = new HBox(8, head, gap);
        first.setAlignment(Pos.CENTER_LEFT);
        VBox top = new VBox(6, first, chips.node());
        top.setPadding(new Insets(12, 18, 8, 18));
        list.setId("leg-ledger-list");
        list.setAccessibleText("Ledger of the leg");
        list.setFixedCellSize(theme.sized(RowPane.HEIGHT));
        theme.onChange(() -> {
            list.setFixedCellSize(theme.sized(RowPane.HEIGHT));
            list.refresh();
        });
        list.setCellFactory(view -> new LineCell(theme, judged::closeShare));
        list.setPlaceholder(new Label("No row of this kind."));
        list.getSelectionModel().selectedItemProperty().addListener((observable, before, line) -> {
            if (!filling && line instanceof Line.Entry entry) {
                judged.look(entry.finding());
            }
        });
        list.setOnMouseClicked(event -> choose());
        list.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER) {
                choose();
                event.consume();
            }
        });
        VBox.setVgrow(list, Priority.ALWAYS);
        list.setMinHeight(RowPane.HEIGHT * 2);
        VBox.setMargin(card, new Insets(8, 18, 12, 18));
        VBox column = new VBox(top, list, card);
        column.setMinWidth(0);
        return column;
    }

    private void refresh() {
        Ledger ledger = judged.ledger();
        head.setText(title.get());
        chips.show(ledger, shown.only());
        List<Line> fresh = new LedgerLines(judged.saved()).lines(ledger, row -> false, shown);
        filling = true;
        if (!list.getItems().equals(fresh)) {
            list.getItems().setAll(fresh);
        }
        Optional<Finding> looked = judged.finding();
        Optional<Line.Entry> entry = looked.flatMap(finding -> fresh.stream()
                .flatMap(line -> Line.entry(line).stream())
                .filter(one -> one.holds(finding))
                .findFirst());
        int index = entry.map(fresh::indexOf).orElse(-1);
        if (index < 0) {
            list.getSelectionModel().clearSelection();
        } else if (list.getSelectionModel().getSelectedIndex() != index) {
            list.getSelectionModel().select(index);
            list.getFocusModel().focus(index);
            list.scrollTo(Math.max(0, index - 2));
        }
        filling = false;
        card.show(entry, Optional.empty());
    }

    private void choose() {
        Line line = list.getSelectionModel().getSelectedItem();
        if (line instanceof Line.Entry entry) {
            judged.show(entry.row());
        } else if (line instanceof Line.More) {
            shown = shown.withAllMet();
            refresh();
        }
    }
}
