package org.shelterwright.app.desk.ledger;

import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.ask.Person;
import org.shelterwright.app.desk.ask.Questions;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;

/** A ledger column: its lines, and the card of the finding that is looked at. */
public final class LedgerColumn {
    private final Judged judged;
    private final Naming naming;
    private final VerdictChips chips;
    private final ListView<Line> list = new ListView<>();
    private final FindingCard card;
    private final VBox node;
    private final Button order = new Button();
    private final Label title = new Label();
    private LedgerLines lines;
    private Ledger before;
    private Shown shown = Shown.USUAL;
    private boolean filling;

    /** @param person who accepts rows */
    public LedgerColumn(
            Judged judged, Naming naming, Commands commands, Questions questions, Person person, Theme theme) {
        this.judged = judged;
        this.naming = naming;
        before = judged.saved();
        lines = new LedgerLines(before);
        chips = new VerdictChips(theme, verdict -> show(shown.toggled(verdict)));
        card = new FindingCard(commands, theme, naming);
        Acceptances acceptances = new Acceptances(judged, questions, person, Clock.system(ZoneId.systemDefault()));
        new LedgerCommands(this, judged, acceptances, naming).addTo(commands);
        node = build(theme);
        judged.onRows(this::refresh);
        judged.onLook(this::follow);
        refresh();
    }

    public Region node() {
        return node;
    }

    Shown shown() {
        return shown;
    }

    void show(Shown other) {
        shown = other;
        refresh();
    }

    /** Rows of the line that is looked at. */
    List<Row> looked() {
        return entry().map(entry -> entry.group().rows()).orElse(List.of());
    }

    void takeFocus() {
        list.requestFocus();
        if (list.getSelectionModel().isEmpty()) {
            list.getSelectionModel().selectFirst();
        }
    }

    private VBox build(Theme theme) {
        title.getStyleClass().add("title");
        order.getStyleClass().add("order");
        order.setOnAction(event -> show(shown.bySubject(!shown.bySubject())));
        HBox gap = new HBox();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox head = new HBox(8, title, gap, order);
        head.setAlignment(Pos.CENTER_LEFT);
        FlowPane filter = chips.node();
        VBox top = new VBox(6, head, filter);
        top.setPadding(new Insets(12, 18, 8, 18));
        list.setId(naming.list());
        list.setFixedCellSize(theme.sized(RowPane.HEIGHT));
        theme.onChange(() -> {
            list.setFixedCellSize(theme.sized(RowPane.HEIGHT));
            list.refresh();
        });
        list.setCellFactory(view -> new LineCell(theme, judged::closeShare));
        list.setPlaceholder(new Label("No row of this kind."));
        list.getSelectionModel().selectedItemProperty().addListener((observable, before, line) -> look(line));
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
        if (before != judged.saved()) {
            before = judged.saved();
            lines = new LedgerLines(before);
        }
        Ledger ledger = judged.ledger();
        List<Line> fresh = lines.lines(ledger, row -> judged.accepted(row).isPresent(), shown);
        title.setText(judged.title());
        list.setAccessibleText(judged.title());
        chips.show(ledger, shown.only());
        order.setText(shown.bySubject() ? "by subject" : "tightest first");
        order.setAccessibleText(shown.bySubject() ? "Put the tightest rows first" : "Put rows together by subject");
        if (!list.getItems().equals(fresh)) {
            filling = true;
            list.getItems().setAll(fresh);
            filling = false;
        }
        follow();
    }

    /** Selects the line of the finding that is looked at, and fills its card. */
    private void follow() {
        Optional<Line.Entry> entry = entry();
        filling = true;
        int index = entry.map(list.getItems()::indexOf).orElse(-1);
        if (index < 0) {
            list.getSelectionModel().clearSelection();
        } else if (list.getSelectionModel().getSelectedIndex() != index) {
            list.getSelectionModel().select(index);
            list.getFocusModel().focus(index);
            list.scrollTo(Math.max(0, index - 2));
        }
        filling = false;
        card.show(entry, entry.flatMap(one -> judged.accepted(one.row())));
    }

    /** The line of the finding that is looked at. */
    private Optional<Line.Entry> entry() {
        return judged.finding()
                .flatMap(finding -> list.getItems().stream()
                        .flatMap(line -> Line.entry(line).stream())
                        .filter(entry -> entry.holds(finding))
                        .findFirst());
    }

    private void look(@Nullable Line line) {
        if (!filling && line instanceof Line.Entry entry) {
            judged.look(entry.finding());
        }
    }

    private void choose() {
        Line line = list.getSelectionModel().getSelectedItem();
        if (line instanceof Line.Entry entry) {
            judged.show(entry.row());
        } else if (line instanceof Line.More) {
            show(shown.withAllMet());
        }
    }
}
