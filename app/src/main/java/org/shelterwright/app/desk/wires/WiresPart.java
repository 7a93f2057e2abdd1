package org.shelterwright.app.desk.wires;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.Icon;
import org.shelterwright.app.desk.twin.RowTable;
import org.shelterwright.app.desk.work.Work;
import org.shelterwright.catalog.cable.Cable;

/** The list of wires with a filter, the trays that they fill beside it, and what can be done with them above. */
public final class WiresPart {
    private final Session session;
    private final WireDesk desk;
    private final WireForm form;
    private final TextField filter = new TextField();
    private final RowTable<WireRow> wires = new RowTable<>("Table of wires", "No wire like this.", WireRow::sentence);
    private final RowTable<TrayRow> trays =
            new RowTable<>("Trays and what fills them", "The body has no trays.", TrayRow::sentence);
    private final Label told = new Label();
    private final ToggleButton fresh = new ToggleButton("New wire", Icon.ADD.node(16));
    private final VBox node;

    /** @param cables those of the catalog; asked when a wire is added */
    public WiresPart(Session session, Commands commands, Work work, Supplier<List<Cable>> cables) {
        this.session = session;
        desk = new WireDesk(session, work, told::setText);
        form = new WireForm(session, cables, desk::add, told::setText);
        filter.setId("wire-filter");
        filter.setPromptText("Filter");
        filter.setAccessibleText("Filter by wire, unit, cable, tray");
        filter.setTooltip(new Tooltip("Filter by wire, unit, cable, tray"));
        filter.setPrefWidth(220);
        filter.textProperty().addListener((observable, before, typed) -> show());
        told.setId("wire-told");
        told.setWrapText(true);
        told.getStyleClass().setAll("label", "second");
        told.managedProperty().bind(told.textProperty().isNotEmpty());
        fresh.setId("wire-new");
        fresh.setMinWidth(Region.USE_PREF_SIZE);
        fresh.setOnAction(event -> form.takeFocus());
        form.node().visibleProperty().bind(fresh.selectedProperty());
        columns();
        addTo(commands);
        HBox orders = new HBox(
                6,
                filter,
                fresh,
                order(commands, "wires.route", "Route missing"),
                order(commands, "wires.route-all", "Route all"),
                order(commands, "wires.pin", "Pin or unpin"),
                order(commands, "wires.by-trays", "Lead by trays"),
                order(commands, "wires.remove", "Take out"));
        orders.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(filter, Priority.ALWAYS);
        filter.setMinWidth(60);
        filter.setMaxWidth(300);
        SplitPane tables = new SplitPane(wires.node(), trays.node());
        tables.setDividerPositions(0.6);
        VBox.setVgrow(tables, Priority.ALWAYS);
        node = new VBox(6, orders, form.node(), told, tables);
        node.setPadding(new Insets(8, 12, 0, 12));
        session.standing().addListener((observable, before, now) -> show());
        node.sceneProperty().addListener((observable, before, now) -> show());
    }

    public Region node() {
        return node;
    }

    private void addTo(Commands commands) {
        commands.add(Command.of("wires.new", "Add a wire", List.of(), () -> {
            if (node.getScene() == null) {
                commands.run("view.wires");
            }
            fresh.setSelected(true);
            form.takeFocus();
        }));
        commands.add(command("route", "Route wires without a route", desk::obstacle, desk::routeMissing));
        commands.add(command("route-all", "Route all wires", desk::obstacle, desk::routeAll));
        commands.add(command(
                "pin",
                "Pin or unpin the routes of the chosen wires",
                this::noneRouted,
                () -> desk.pin(session.selection().wires().get())));
        commands.add(command("by-trays", "Lead the chosen wire by the chosen trays", this::noneLed, this::lead));
        commands.add(command(
                "remove",
                "Take the chosen wires out of the brief",
                this::noneChosen,
                () -> desk.remove(session.selection().wires().get())));
    }

    private static Command command(String id, String name, Supplier<Optional<String>> obstacle, Runnable action) {
        return new Command("wires." + id, name, List.of("cable"), List.of(), obstacle, action);
    }

    private Button order(Commands commands, String id, String name) {
        Button button = new Button(name);
        button.setId(id.replace('.', '-'));
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(event -> told.setText(commands.run(id).orElse(told.getText())));
        return button;
    }

    private Optional<String> noneChosen() {
        return session.selection().wires().get().isEmpty()
                ? Optional.of("No wire is chosen. Choose some in the list.")
                : Optional.empty();
    }

    private Optional<String> noneRouted() {
        return noneChosen()
                .or(() -> session.selection().wires().get().stream()
                        .filter(wire -> !session.now().layout().routes().containsKey(wire))
                        .findFirst()
                        .map(wire -> "The wire \"" + wire + "\" has no route to pin. Route it first."));
    }

    private Optional<String> noneLed() {
        if (session.selection().wires().get().size() != 1) {
            return Optional.of("Choose the one wire in the list that is to be led by hand.");
        }
        return trays.chosen().isEmpty()
                ? Optional.of("Choose the trays in the table beside that it is to lie in.")
                : desk.obstacle();
    }

    private void lead() {
        String wire = session.selection().wires().get().iterator().next();
        desk.through(wire, trays.chosen().stream().map(TrayRow::name).distinct().toList());
    }

    private void columns() {
        wires.node().setId("wires");
        wires.column("Wire", 52, false, WireRow::wire)
                .column("From", 150, false, WireRow::from)
                .column("To", 150, false, WireRow::to)
                .column("Cut, m", 64, true, WireRow::length)
                .column("Kept", 64, false, WireRow::pinned)
                .column("Findings", 90, false, WireRow::findings)
                .column("By", 240, false, WireRow::way)
                .column("Cable", 180, false, WireRow::cable);
        wires.share(
                WireRow::wire,
                session.selection().wires(),
                chosen -> session.selection().wires(chosen));
        trays.node().setId("wire-trays");
        trays.column("Tray", 128, false, TrayRow::tray)
                .column("Filled", 64, true, TrayRow::filled)
                .column("Of", 62, true, TrayRow::most)
                .column("By wires", 320, false, row -> String.join(", ", row.wires()));
        trays.node().setOnMouseClicked(event -> {
            TrayRow row = trays.node().getSelectionModel().getSelectedItem();
            if (event.getClickCount() == 2 && row != null) {
                session.selection().wires(Set.copyOf(row.wires()));
            }
        });
    }

    /** While it is not looked at, nothing of it is worked out. */
    private void show() {
        if (node.getScene() == null) {
            return;
        }
        wires.show(WireRow.of(session.now(), filter.getText()));
        trays.show(TrayRow.of(session.now().scene()));
    }
}
