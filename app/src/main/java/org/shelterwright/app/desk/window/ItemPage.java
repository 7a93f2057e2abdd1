package org.shelterwright.app.desk.window;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.hand.Addition;
import org.shelterwright.app.desk.item.ItemForm;
import org.shelterwright.app.desk.item.ItemReading;
import org.shelterwright.app.desk.item.NewItem;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.edit.AddUnit;
import org.shelterwright.layouts.edit.ChangeItem;
import org.shelterwright.layouts.edit.SwapItem;
import org.shelterwright.layouts.layout.Layout;

/** The form of an item, over the page: that of the selected unit, or a new one. What it changes is the layout's own copy. */
final class ItemPage {
    private static final double WIDTH = 500;

    private final Pane over;
    private final Session session;
    private final Theme theme;
    private final Supplier<List<Item>> catalog;

    /** @param catalog every item that comes with the program; a new item takes the id of none of them */
    ItemPage(Pane over, Session session, Theme theme, Supplier<List<Item>> catalog) {
        this.over = over;
        this.session = session;
        this.theme = theme;
        this.catalog = catalog;
    }

    void addTo(Commands commands) {
        commands.add(new Command(
                "list.edit-item",
                "Edit the item of the selected unit",
                List.of("form", "size", "mass", "catalog", "change"),
                List.of("Ctrl+E"),
                this::obstacle,
                this::edit));
        commands.add(new Command(
                "list.new-item",
                "Make a new item",
                List.of("form", "catalog", "add", "create"),
                List.of("Ctrl+Shift+N"),
                () -> session.now().tryingOut() ? Optional.of("Finish the drag first.") : Optional.empty(),
                this::make));
    }

    private Optional<String> obstacle() {
        if (session.now().tryingOut()) {
            return Optional.of("Finish the drag first.");
        }
        return selected().isPresent() ? Optional.empty() : Optional.of("Nothing is selected. Select a unit first.");
    }

    private Optional<UnitSpec> selected() {
        return session.selection()
                .leader()
                .flatMap(id ->
                        units().stream().filter(unit -> unit.id().equals(id)).findFirst());
    }

    private List<UnitSpec> units() {
        return session.now().layout().brief().units();
    }

    private void edit() {
        UnitSpec unit = selected().orElseThrow();
        Item item = session.now().layout().item(unit);
        long alike =
                units().stream().filter(one -> one.item().equals(item.id())).count();
        ItemForm form = new ItemForm(item, session.now().scene(), theme);
        String all = alike == 1 ? "Change it" : "Change it for all " + alike + " units";
        Button change = order(form, all, item, changed -> session.apply(new ChangeItem(changed)));
        change.getStyleClass().add("primary");
        change.setId("item-change");
        FlowPane orders = new FlowPane(8, 6, change);
        if (alike > 1) {
            Button only = order(form, "Only for " + unit.name(), item, changed -> {
                Item own = NewItem.named(changed, taken());
                session.apply(new SwapItem(unit.id(), own));
            });
            only.setId("item-change-only");
            orders.getChildren().add(only);
        }
        open(form, orders, item.name(), "The layout's own copy is changed; the catalog is not touched.");
    }

    private void make() {
        Item blank = NewItem.blank();
        ItemForm form = new ItemForm(blank, session.now().scene(), theme);
        Button add = order(form, "Add to the equipment", null, made -> {
            Item named = NewItem.named(made, taken());
            AddUnit added = Addition.of(session.now().layout(), named);
            session.apply(added);
            session.selection().only(added.unit().id());
        });
        add.getStyleClass().add("primary");
        add.setId("item-add");
        open(form, new FlowPane(8, 6, add), "New item", "It is kept in this layout. What is not known may stay empty.");
    }

    /** @param before as it is; {@code null} if there is none, and anything is a change */
    private Button order(ItemForm form, String words, @Nullable Item before, Consumer<Item> action) {
        Button order = new Button(words);
        Runnable refresh = () -> order.setDisable(
                form.reading().get().item().filter(item -> !item.equals(before)).isEmpty());
        form.reading().addListener((observable, old, now) -> refresh.run());
        refresh.run();
        order.setOnAction(event -> form.reading().get().item().ifPresent(item -> {
            action.accept(item);
            SheetOver.closeAll(over);
        }));
        return order;
    }

    private void open(ItemForm form, FlowPane orders, String title, String sentence) {
        Label state = new Label();
        state.getStyleClass().add("caption");
        state.setWrapText(true);
        form.reading().addListener((observable, before, now) -> state.setText(words(now)));
        state.setText(words(form.reading().get()));
        VBox foot = new VBox(6, state, orders);
        foot.setPadding(new Insets(8, 14, 8, 14));
        VBox.setVgrow(form.node(), Priority.ALWAYS);
        SheetOver sheet = new SheetOver(over, title, sentence, new VBox(form.node(), foot), WIDTH);
        sheet.setId("item-form");
        sheet.open(form.first());
    }

    private static String words(ItemReading reading) {
        int wrong = reading.faults().size();
        return switch (wrong) {
            case 0 -> "Esc leaves everything as it was.";
            case 1 -> "One thing is wrong. It stands beside its field.";
            default -> wrong + " things are wrong. They stand beside their fields, also those further up or down.";
        };
    }

    private Set<String> taken() {
        Layout layout = session.now().layout();
        Set<String> taken = new HashSet<>(layout.parts().items().keySet());
        catalog.get().forEach(item -> taken.add(item.id()));
        layout.brief().units().forEach(unit -> taken.add(unit.id()));
        return taken;
    }
}
