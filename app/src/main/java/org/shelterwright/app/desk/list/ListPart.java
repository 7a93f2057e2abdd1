package org.shelterwright.app.desk.list;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.Icon;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.layouts.layout.Layout;

/** The equipment column: what the brief asks for, with what is still to place first, and the way to the catalog. */
public final class ListPart {
    private final Session session;
    private final Commands commands;
    private final CatalogChoice catalog;
    private final ListView<Entry> list = new ListView<>();
    private final TextField filter = new TextField();
    private final Label count = new Label();
    private final VBox node;
    private boolean following;

    /** @param items every item of the catalog; asked when the catalog is first shown */
    public ListPart(Session session, Commands commands, Supplier<List<Item>> items) {
        this.session = session;
        this.commands = commands;
        catalog = new CatalogChoice(session, items, this::goBack, () -> commands.run("list.new-item"));
        node = new VBox();
        node.setMinWidth(0);
        commands.add(Command.of("list.filter", "Filter the equipment", List.of("Ctrl+F"), () -> {
            showEquipment();
            filter.requestFocus();
        }));
        commands.add(Command.of("list.catalog", "Draw from the catalog", List.of("Ctrl+Insert"), this::showCatalog));
        list.setId("equipment-list");
        list.setAccessibleText("Equipment");
        list.getStyleClass().add("letters");
        list.getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
        list.setCellFactory(view -> new EntryCell());
        list.getSelectionModel().getSelectedItems().addListener((ListChangeListener<Entry>) change -> share());
        list.setOnMouseClicked(event -> {
            if (event.getClickCount() == 2) {
                place();
            }
        });
        list.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER) {
                place();
                event.consume();
            }
        });
        filter.textProperty().addListener((observable, before, typed) -> show());
        FilterKeys.lead(filter, list, Entry.Unit.class::isInstance);
        session.standing().addListener((observable, before, now) -> {
            if (before.layout() != now.layout()) {
                show();
            }
        });
        session.selection().units().addListener((observable, before, now) -> follow());
        showEquipment();
        show();
    }

    public Region node() {
        return node;
    }

    private void showEquipment() {
        Label title = new Label("Equipment");
        title.getStyleClass().add("title");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        count.getStyleClass().setAll("label", "second");
        HBox head = new HBox(8, title, gap, count);
        head.setAlignment(Pos.BASELINE_LEFT);
        filter.setPromptText("Filter by name, kind, mass");
        VBox top = new VBox(8, head, filter);
        top.setPadding(new Insets(12, 18, 8, 18));
        Button draw = new Button("Draw from the catalog", Icon.ADD.node(16));
        draw.setMaxWidth(Double.MAX_VALUE);
        draw.setMinWidth(0);
        draw.setOnAction(event -> showCatalog());
        HBox.setHgrow(draw, Priority.ALWAYS);
        Button edit = new Button("Item");
        edit.setId("edit-item");
        edit.setMinWidth(Region.USE_PREF_SIZE);
        edit.setAccessibleText("Edit the item of the selected unit");
        edit.setTooltip(new Tooltip("Edit the item of the selected unit (Ctrl+E)"));
        edit.setOnAction(event -> commands.run("list.edit-item"));
        edit.disableProperty()
                .bind(Bindings.createBooleanBinding(
                        () -> session.selection().units().get().isEmpty(),
                        session.selection().units()));
        HBox orders = new HBox(6, draw, edit);
        VBox.setMargin(orders, new Insets(8, 18, 8, 18));
        VBox.setVgrow(list, Priority.ALWAYS);
        list.setMinHeight(60);
        node.getChildren().setAll(top, list, orders);
    }

    /** From the catalog, to what was added: Enter there places it. */
    private void goBack() {
        showEquipment();
        list.getFocusModel().focus(list.getSelectionModel().getSelectedIndex());
        list.requestFocus();
    }

    private void showCatalog() {
        node.getChildren().setAll(catalog.node());
        catalog.takeFocus();
    }

    private void place() {
        boolean unplaced = session.selection().units().get().stream()
                .anyMatch(unit -> !session.now().layout().placements().containsKey(unit));
        if (unplaced) {
            commands.run("edit.place");
        }
    }

    private void show() {
        Layout layout = session.now().layout();
        List<Entry> entries = Entry.of(layout, filter.getText());
        count.setText(
                layout.placements().size() + " of " + layout.brief().units().size() + " placed");
        following = true;
        if (!list.getItems().equals(entries)) {
            list.getItems().setAll(entries);
        }
        following = false;
        follow();
    }

    private void follow() {
        Set<String> chosen = session.selection().units().get();
        if (following || chosen.equals(selected())) {
            return;
        }
        following = true;
        list.getSelectionModel().clearSelection();
        int last = -1;
        for (int i = 0; i < list.getItems().size(); i++) {
            if (list.getItems().get(i) instanceof Entry.Unit unit && chosen.contains(unit.id())) {
                list.getSelectionModel().select(i);
                last = i;
            }
        }
        if (last >= 0 && !isSeen(last)) {
            list.scrollTo(Math.max(0, last - 1));
        }
        following = false;
    }

    private boolean isSeen(int index) {
        return list.lookupAll(".list-cell").stream()
                .map(node -> (ListCell<?>) node)
                .anyMatch(cell -> !cell.isEmpty()
                        && cell.getIndex() == index
                        && cell.getBoundsInParent().getMinY() >= 0
                        && cell.getBoundsInParent().getMaxY() <= list.getHeight());
    }

    private void share() {
        if (!following) {
            following = true;
            session.selection().set(selected());
            following = false;
        }
    }

    private Set<String> selected() {
        Set<String> units = new LinkedHashSet<>();
        for (Entry entry : list.getSelectionModel().getSelectedItems()) {
            if (entry instanceof Entry.Unit unit) {
                units.add(unit.id());
            }
        }
        return units;
    }
}
