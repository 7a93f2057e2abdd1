package org.shelterwright.app.desk.list;

import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.hand.Addition;
import org.shelterwright.app.desk.hand.Carry;
import org.shelterwright.app.desk.hand.Held;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.Icon;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.edit.AddUnit;

/** The items of the catalog, to add one to the equipment of the brief. */
final class CatalogChoice {
    private final Session session;
    private final Supplier<List<Item>> items;
    private final Runnable back;
    private final TextField filter = new TextField();
    private final ListView<Item> list = new ListView<>();
    private final VBox node;

    /**
     * @param back shows the equipment again
     * @param make begins a new item
     */
    CatalogChoice(Session session, Supplier<List<Item>> items, Runnable back, Runnable make) {
        this.session = session;
        this.items = items;
        this.back = back;
        Label title = new Label("Catalog");
        title.getStyleClass().add("title");
        filter.setPromptText("Filter by name, kind, size");
        filter.textProperty().addListener((observable, before, typed) -> show());
        FilterKeys.lead(filter, list, item -> true);
        Label how = new Label("Draw an item into the view, or press Enter to add it to the equipment.");
        how.getStyleClass().add("caption");
        how.setWrapText(true);
        how.setMinHeight(Region.USE_PREF_SIZE);
        VBox top = new VBox(8, title, how, filter);
        top.setPadding(new Insets(12, 18, 8, 18));
        list.setId("catalog-list");
        list.setAccessibleText("Items of the catalog");
        list.setCellFactory(view -> new ItemCell());
        list.setPlaceholder(new Label("No item like this."));
        list.setOnMouseClicked(event -> {
            if (event.getClickCount() == 2) {
                add();
            }
        });
        list.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER) {
                add();
                event.consume();
            }
        });
        VBox.setVgrow(list, Priority.ALWAYS);
        Button add = new Button("Add to the equipment", Icon.ADD.node(16));
        add.setMaxWidth(Double.MAX_VALUE);
        add.disableProperty()
                .bind(list.getSelectionModel().selectedItemProperty().isNull());
        add.setOnAction(event -> add());
        Button fresh = new Button("Make a new item", Icon.ADD.node(16));
        fresh.setMaxWidth(Double.MAX_VALUE);
        fresh.setOnAction(event -> {
            back.run();
            make.run();
        });
        Button away = new Button("Back to the equipment", Icon.BACK.node(16));
        away.setMaxWidth(Double.MAX_VALUE);
        away.setCancelButton(true);
        away.setOnAction(event -> back.run());
        VBox orders = new VBox(6, add, fresh, away);
        orders.setPadding(new Insets(8, 18, 8, 18));
        node = new VBox(top, list, orders);
        VBox.setVgrow(node, Priority.ALWAYS);
    }

    Region node() {
        return node;
    }

    void takeFocus() {
        show();
        filter.requestFocus();
    }

    private void show() {
        List<String> asked =
                List.of(filter.getText().strip().toLowerCase(Locale.ROOT).split("\\s+"));
        list.getItems()
                .setAll(items.get().stream()
                        .filter(item -> asked.stream()
                                .allMatch(part ->
                                        words(item).toLowerCase(Locale.ROOT).contains(part)))
                        .toList());
    }

    private void add() {
        Item item = list.getSelectionModel().getSelectedItem();
        if (item == null) {
            return;
        }
        AddUnit added = Addition.of(session.now().layout(), item);
        session.apply(added);
        session.selection().only(added.unit().id());
        back.run();
    }

    private static String words(Item item) {
        return item.name() + " " + item.kind().name().replace('_', ' ') + " " + size(item);
    }

    private static String size(Item item) {
        Size size = item.size();
        return Numerals.mm(size.x()) + " × " + Numerals.mm(size.y()) + " × " + Numerals.mm(size.z());
    }

    /** A line of the catalog; drawn into a view, a unit of it is added and placed. */
    private static final class ItemCell extends ListCell<Item> implements Held {
        private final Label name = new Label();
        private final Label size = new Label();
        private final VBox lines = new VBox(name, size);

        ItemCell() {
            size.getStyleClass().add("caption");
            setPrefWidth(0);
            setOnDragDetected(event -> {
                if (getItem() != null) {
                    startFullDrag();
                    event.consume();
                }
            });
        }

        @Override
        public Carry take(Session asking) {
            return Carry.draw(asking, getItem());
        }

        @Override
        protected void updateItem(@Nullable Item item, boolean empty) {
            super.updateItem(item, empty);
            setText(null);
            setGraphic(empty || item == null ? null : lines);
            if (!empty && item != null) {
                name.setText(item.name());
                size.setText(size(item) + Numerals.GAP + "mm, " + Entry.mass(item));
            }
        }
    }
}
