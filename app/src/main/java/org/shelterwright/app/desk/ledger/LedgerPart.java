package org.shelterwright.app.desk.ledger;

import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
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
import org.shelterwright.app.desk.session.Finding;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.rules.Figure;

/** The ledger column. It follows the session, and shares the finding that is looked at with the view. */
public final class LedgerPart {
    private final Session session;
    private final FindingSteps steps;
    private final Acceptances acceptances;
    private final VerdictChips chips;
    private final ListView<Line> list = new ListView<>();
    private final FindingCard card;
    private final VBox node;
    private final Button order = new Button();
    private LedgerLines lines;
    private Shown shown = Shown.USUAL;
    private boolean filling;

    /** @param saved the ledger of the layout as it was last saved */
    public LedgerPart(
            Session session,
            Commands commands,
            Questions questions,
            Person person,
            Theme theme,
            ObservableValue<Ledger> saved) {
        this.session = session;
        steps = new FindingSteps(session);
        acceptances = new Acceptances(session, questions, person, Clock.system(ZoneId.systemDefault()));
        lines = new LedgerLines(saved.getValue());
        chips = new VerdictChips(theme, verdict -> show(shown.toggled(verdict)));
        card = new FindingCard(commands, theme, "ledger.", true);
        new LedgerCommands(this, steps, acceptances).addTo(commands);
        node = build(theme);
        session.standing().addListener((observable, before, now) -> refresh());
        session.selection().finding().addListener((observable, before, now) -> follow());
        saved.addListener((observable, before, now) -> {
            lines = new LedgerLines(now);
            refresh();
        });
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
        return looked(session.selection().finding().get())
                .map(entry -> entry.group().rows())
                .orElse(List.of());
    }

    void takeFocus() {
        list.requestFocus();
        if (list.getSelectionModel().isEmpty()) {
            list.getSelectionModel().selectFirst();
        }
    }

    private VBox build(Theme theme) {
        Label title = new Label("Ledger");
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
        list.setId("ledger-list");
        list.setAccessibleText("Ledger");
        list.setFixedCellSize(theme.sized(RowPane.HEIGHT));
        theme.onChange(() -> {
            list.setFixedCellSize(theme.sized(RowPane.HEIGHT));
            list.refresh();
        });
        list.setCellFactory(view -> new LineCell(theme, this::closeShare));
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

    private double closeShare() {
        return session.now().scene().rules().valueOr(Figure.CLOSE_SHARE, 0.9);
    }

    private boolean accepted(Row row) {
        return session.now().layout().acceptance(row.limit(), row.units()).isPresent();
    }

    private void refresh() {
        Ledger ledger = session.now().ledger();
        List<Line> fresh = lines.lines(ledger, this::accepted, shown);
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
        Optional<Line.Entry> entry = looked(session.selection().finding().get());
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
        card.show(entry, entry.flatMap(shownEntry -> acceptances.accepted(shownEntry.row())));
    }

    private Optional<Line.Entry> looked(@Nullable Finding finding) {
        return finding == null
                ? Optional.empty()
                : list.getItems().stream()
                        .flatMap(line -> Line.entry(line).stream())
                        .filter(entry -> entry.holds(finding))
                        .findFirst();
    }

    private void look(@Nullable Line line) {
        if (!filling && line instanceof Line.Entry entry) {
            session.selection().finding().set(entry.finding());
        }
    }

    private void choose() {
        Line line = list.getSelectionModel().getSelectedItem();
        if (line instanceof Line.Entry entry) {
            steps.show(entry.row());
        } else if (line instanceof Line.More) {
            show(shown.withAllMet());
        }
    }
}
