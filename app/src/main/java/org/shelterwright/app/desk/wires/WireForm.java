package org.shelterwright.app.desk.wires;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.Icon;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.edit.SetWires;
import org.shelterwright.layouts.layout.Layout;

/** A new wire: both ends and the cable, typed, chosen, or its ends picked as units in the view, one after the other. */
final class WireForm {
    private final Session session;
    private final Supplier<List<Cable>> cables;
    private final BiConsumer<SetWires, String> add;
    private final Consumer<String> tell;
    private final ComboBox<String> from = box("wire-from", "From: unit/port", 210);
    private final ComboBox<String> to = box("wire-to", "To: unit/port", 210);
    private final ComboBox<String> cable = box("wire-cable", "Cable", 150);
    private final ToggleButton pick = new ToggleButton("Pick in the view");
    private final HBox node;

    WireForm(Session session, Supplier<List<Cable>> cables, BiConsumer<SetWires, String> add, Consumer<String> tell) {
        this.session = session;
        this.cables = cables;
        this.add = add;
        this.tell = tell;
        Button order = new Button("Add the wire", Icon.ADD.node(16));
        order.setId("wire-add");
        order.setMinWidth(Region.USE_PREF_SIZE);
        order.setOnAction(event -> add());
        pick.setId("wire-pick");
        pick.setMinWidth(Region.USE_PREF_SIZE);
        pick.setTooltip(new Tooltip("Click the unit at which the wire begins, then the one at which it ends."));
        pick.setOnAction(event -> begin());
        HBox.setHgrow(from, Priority.ALWAYS);
        HBox.setHgrow(to, Priority.ALWAYS);
        node = new HBox(6, pick, from, to, cable, order);
        node.setAlignment(Pos.CENTER_LEFT);
        node.managedProperty().bind(node.visibleProperty());
        session.selection().units().addListener((observable, before, now) -> picked());
        from.setOnShowing(event -> offer(from));
        to.setOnShowing(event -> offer(to));
        cable.setOnShowing(event -> offer(cable, fitting()));
    }

    Region node() {
        return node;
    }

    void takeFocus() {
        from.requestFocus();
    }

    private static ComboBox<String> box(String id, String prompt, double width) {
        ComboBox<String> box = new ComboBox<>();
        box.setId(id);
        box.setEditable(true);
        box.setPromptText(prompt);
        box.setAccessibleText(prompt);
        box.setPrefWidth(width);
        box.setMinWidth(80);
        return box;
    }

    private void begin() {
        if (pick.isSelected()) {
            from.getEditor().clear();
            to.getEditor().clear();
            session.selection().clear();
            tell.accept("Click the unit at which the wire begins.");
        }
    }

    /** A unit was chosen in the view: its ports are offered for the end that is still open. */
    private void picked() {
        String unit = session.selection().leader().orElse(null);
        if (!pick.isSelected() || unit == null) {
            return;
        }
        Layout layout = session.now().layout();
        List<String> ports = layout.brief().units().stream()
                .filter(spec -> spec.id().equals(unit))
                .map(spec -> NewWire.ends(session.now().scene(), spec))
                .findFirst()
                .orElse(List.of());
        if (ports.isEmpty()) {
            tell.accept(name(layout, unit) + " has no ports. Pick another unit.");
            return;
        }
        boolean begins = from.getEditor().getText().isBlank();
        offer(begins ? from : to, ports);
        if (begins) {
            from.getEditor().setText(ports.get(0));
        } else {
            NewWire.Ends likely = NewWire.likely(
                    session.now().scene(), cables.get(), from.getEditor().getText(), ports);
            from.getEditor().setText(likely.from());
            to.getEditor().setText(likely.to());
        }
        String choose = ports.size() == 1
                ? ""
                : name(layout, unit) + " has " + ports.size() + " ports: choose the one that is meant. ";
        if (begins) {
            tell.accept(choose + "Then click the unit at which it ends.");
        } else {
            pick.setSelected(false);
            suggest();
            tell.accept(choose + (cable.getEditor().getText().isBlank() ? "Choose its cable." : ""));
        }
    }

    /** Fills in the cable where only one does. */
    private void suggest() {
        List<String> fitting = fitting();
        if (!fitting.contains(cable.getEditor().getText())) {
            cable.getEditor().setText(fitting.size() == 1 ? fitting.get(0) : "");
        }
    }

    private List<String> fitting() {
        return NewWire.cables(
                session.now().scene(),
                cables.get(),
                from.getEditor().getText(),
                to.getEditor().getText());
    }

    private static String name(Layout layout, String unit) {
        return layout.brief().units().stream()
                .filter(spec -> spec.id().equals(unit))
                .map(UnitSpec::name)
                .findFirst()
                .orElse(unit);
    }

    private void offer(ComboBox<String> box) {
        offer(box, NewWire.ends(session.now().scene(), box.getEditor().getText()));
    }

    /** What was typed stays while other choices are offered. */
    private static void offer(ComboBox<String> box, List<String> choices) {
        if (!box.getItems().equals(choices)) {
            String typed = box.getEditor().getText();
            box.getItems().setAll(choices);
            box.getEditor().setText(typed);
        }
    }

    private void add() {
        try {
            SetWires step = NewWire.of(
                    session.now().scene(),
                    cables.get(),
                    from.getEditor().getText(),
                    to.getEditor().getText(),
                    cable.getEditor().getText());
            String id = step.wires().get(step.wires().size() - 1).id();
            from.getEditor().clear();
            to.getEditor().clear();
            pick.setSelected(false);
            add.accept(step, id);
        } catch (IllegalArgumentException refusal) {
            tell.accept(String.valueOf(refusal.getMessage()));
        }
    }
}
