package org.shelterwright.app.desk.window;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** A sheet that lies over the page until it is put away with Esc or a click beside it. */
final class SheetOver extends StackPane {
    /** Size of the text at 100 % (px). */
    private static final double TEXT = 13;

    private final Pane over;
    private final VBox sheet;
    private @Nullable Node before;
    private final WeakInvalidationListener weak;
    private final InvalidationListener free = observable -> leaveFree();
    private Runnable closed = () -> {};

    /**
     * @param over pane over the whole window; its padding is what sheets leave free
     * @param width the most (px, with text of 100 %)
     */
    SheetOver(Pane over, String title, String sentence, Region content, double width) {
        this.over = over;
        weak = new WeakInvalidationListener(free);
        Label head = new Label(title);
        head.getStyleClass().add("title");
        Label words = new Label(sentence);
        words.getStyleClass().add("second");
        words.setWrapText(true);
        words.setMinHeight(Region.USE_PREF_SIZE);
        VBox texts = new VBox(2, head, words);
        texts.setPadding(new Insets(10, 14, 8, 14));
        sheet = new VBox(texts, content);
        VBox.setVgrow(content, Priority.ALWAYS);
        sheet.getStyleClass().add("sheet-over");
        sheet.setStyle("-fx-max-width: " + width / TEXT + "em;");
        StackPane.setAlignment(sheet, Pos.TOP_RIGHT);
        over.paddingProperty().addListener(weak);
        leaveFree();
        getChildren().add(sheet);
        setOnMousePressed(event -> {
            if (event.getTarget() == this) {
                close();
            }
        });
        setOnKeyPressed(this::escape);
        addEventFilter(KeyEvent.KEY_PRESSED, this::stay);
    }

    /** Tab goes round within the sheet: what lies below is not for keys while it is open. */
    private void stay(KeyEvent event) {
        if (event.getCode() != KeyCode.TAB || event.isControlDown()) {
            return;
        }
        List<Node> stops = new ArrayList<>();
        stops(sheet, stops);
        Node focus = getScene().getFocusOwner();
        Node end = event.isShiftDown() ? first(stops) : last(stops);
        if (end != null && (focus == end || !within(focus))) {
            Node next = event.isShiftDown() ? last(stops) : first(stops);
            if (next != null) {
                next.requestFocus();
                event.consume();
            }
        }
    }

    private static @Nullable Node first(List<Node> stops) {
        return stops.isEmpty() ? null : stops.get(0);
    }

    private static @Nullable Node last(List<Node> stops) {
        return stops.isEmpty() ? null : stops.get(stops.size() - 1);
    }

    /** Whatever takes the focus, in its order. */
    private static void stops(Parent parent, List<Node> stops) {
        for (Node child : parent.getChildrenUnmodifiable()) {
            if (child.isVisible() && !child.isDisabled()) {
                if (child.isFocusTraversable()) {
                    stops.add(child);
                }
                if (child instanceof Parent inner) {
                    stops(inner, stops);
                }
            }
        }
    }

    private boolean within(@Nullable Node node) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (at == this) {
                return true;
            }
        }
        return false;
    }

    private void leaveFree() {
        StackPane.setMargin(sheet, new Insets(over.getPadding().getTop() + 8, 18, 40, 18));
    }

    private void escape(KeyEvent event) {
        if (event.getCode() == KeyCode.ESCAPE) {
            close();
            event.consume();
        }
    }

    /** Puts away whatever sheet lies there. */
    static void closeAll(Pane over) {
        List.copyOf(over.getChildren()).forEach(node -> {
            if (node instanceof SheetOver sheet) {
                sheet.close();
            }
        });
    }

    /** Makes it no higher than what it holds. */
    void low() {
        sheet.setMaxHeight(Region.USE_PREF_SIZE);
    }

    /** What is done once it is put away. */
    void onClosed(Runnable action) {
        closed = action;
    }

    void open(Node first) {
        if (first instanceof ListView) {
            // A list keeps Esc for itself.
            first.addEventHandler(KeyEvent.KEY_PRESSED, this::escape);
        }
        before = over.getScene().getFocusOwner();
        closeAll(over);
        over.getChildren().add(this);
        prefWidthProperty().bind(over.widthProperty());
        prefHeightProperty().bind(over.heightProperty());
        // What lies in a pane that scrolls is only there to take the focus once the pane has its skin.
        applyCss();
        layout();
        first.requestFocus();
    }

    void close() {
        over.getChildren().remove(this);
        closed.run();
        if (before != null && before.getScene() != null) {
            before.requestFocus();
        }
    }
}
