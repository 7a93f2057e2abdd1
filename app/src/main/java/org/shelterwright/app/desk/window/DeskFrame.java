package org.shelterwright.app.desk.window;

import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.menu.Reach;
import org.shelterwright.app.desk.space.SpacePane;
import org.shelterwright.app.desk.style.Icon;
import org.shelterwright.app.desk.style.Theme;

/** What every page has in common: top band, notices, the page shown, status line, and what lies over them. */
final class DeskFrame {
    private final Pane over = new Pane();
    private final PageLine pages;
    private final Notices notices;
    private final StatusLine status = new StatusLine();
    private final CommandField field;
    private final TopBand band;
    private final BorderPane frame = new BorderPane();
    private final StackPane root = new StackPane(frame, over);
    private final Button undo;
    private final Button redo;

    DeskFrame(Reach reach, Theme theme, Notices notices) {
        Commands commands = reach.commands();
        this.notices = notices;
        pages = new PageLine(theme);
        field = new CommandField(commands, reach.keys(), theme, over, this::refuse);
        undo = order(commands, "edit.undo", Icon.UNDO);
        redo = order(commands, "edit.redo", Icon.REDO);
        Button documents = order(commands, "file.documents", Icon.DOCUMENT);
        band = new TopBand(pages, reach, field, undo, redo, documents);
        over.setPickOnBounds(false);
        band.heightProperty()
                .addListener((observable, before, now) -> over.setPadding(new Insets(now.doubleValue(), 0, 0, 0)));
        root.addEventFilter(MouseEvent.MOUSE_PRESSED, event -> refuse(""));
        frame.setTop(new VBox(band, notices));
        frame.setBottom(status);
    }

    StackPane root() {
        return root;
    }

    Pane over() {
        return over;
    }

    PageLine pages() {
        return pages;
    }

    TopBand band() {
        return band;
    }

    Notices notices() {
        return notices;
    }

    StatusLine status() {
        return status;
    }

    CommandField field() {
        return field;
    }

    /** The page that is there. */
    Region shown() {
        return (Region) frame.getCenter();
    }

    /** Shows a page. If the focus was on the one before, it goes to the view of this one, where the keys of a view work. */
    void show(Region page) {
        Scene scene = root.getScene();
        Node before = frame.getCenter();
        boolean held =
                scene != null && before != null && before != page && Revealing.isIn(scene.getFocusOwner(), before);
        frame.setCenter(page);
        if (held) {
            Node view = page.lookup("." + SpacePane.VIEW);
            (view == null ? page : view).requestFocus();
        }
    }

    /** Says in the status line why something could not be done; empty once it no longer matters. */
    void refuse(String sentence) {
        status.show("Not done", sentence);
    }

    void showHistory(boolean canUndo, String undoName, boolean canRedo, String redoName) {
        undo.setDisable(!canUndo);
        undo.setTooltip(new Tooltip(canUndo ? "Undo: " + undoName : "Nothing was changed yet."));
        redo.setDisable(!canRedo);
        redo.setTooltip(new Tooltip(canRedo ? "Do again: " + redoName : "Nothing was undone."));
    }

    private Button order(Commands commands, String id, Icon icon) {
        Button button = new Button("", icon.node(22));
        button.getStyleClass().add("bare");
        button.setOnAction(event -> commands.run(id).ifPresent(this::refuse));
        String name = commands.byId(id).map(Command::name).orElse(id);
        button.setAccessibleText(name);
        button.setTooltip(new Tooltip(name));
        return button;
    }
}
