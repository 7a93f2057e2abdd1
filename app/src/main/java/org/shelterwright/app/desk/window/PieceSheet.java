package org.shelterwright.app.desk.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.inside.InsideDesk;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.inside.InRack;

/** Finds a piece by its name: the view goes to its unit, and its place is opened. Those without a place are listed first. */
final class PieceSheet {
    private static final double WIDTH = 420;

    private final Pane over;
    private final Session session;
    private final InsideDesk inside;
    private final Commands commands;
    private final Theme theme;

    PieceSheet(Pane over, Session session, InsideDesk inside, Commands commands, Theme theme) {
        this.over = over;
        this.session = session;
        this.inside = inside;
        this.commands = commands;
        this.theme = theme;
    }

    void addTo(Commands all) {
        all.add(new Command(
                "inside.find",
                "Find a piece",
                List.of("rack", "locker", "where", "stowage", "search"),
                List.of("Ctrl+I"),
                this::obstacle,
                this::open));
    }

    private Optional<String> obstacle() {
        if (session.now().tryingOut()) {
            return Optional.of("Finish the drag first.");
        }
        return pieces().isEmpty() ? Optional.of("The brief lists no pieces.") : Optional.empty();
    }

    private List<PieceSpec> pieces() {
        return session.now().layout().brief().listed().pieces();
    }

    private void open() {
        TextField typed = new TextField();
        typed.setId("piece-name");
        typed.setPromptText("Name of a piece, or of what it is in");
        ListView<PieceSpec> list = new ListView<>();
        list.setId("piece-list");
        list.setCellFactory(view -> new Cell());
        list.setPlaceholder(new Label("No piece of this name."));
        VBox.setVgrow(list, Priority.ALWAYS);
        VBox top = new VBox(typed);
        top.setPadding(new Insets(0, 14, 8, 14));
        VBox content = new VBox(top, list);
        int left = inside.toPlace().size();
        SheetOver sheet = new SheetOver(
                over,
                "Find a piece",
                pieces().size() + " pieces; "
                        + (left == 0 ? "every one has a place." : left + " without a place, listed first."),
                content,
                WIDTH);
        sheet.setId("find-piece");
        Runnable fill = () -> {
            list.getItems().setAll(found(typed.getText()));
            list.getSelectionModel().selectFirst();
        };
        typed.textProperty().addListener((observable, before, now) -> fill.run());
        fill.run();
        Runnable go = () -> {
            PieceSpec piece = list.getSelectionModel().getSelectedItem();
            if (piece != null) {
                sheet.close();
                goTo(piece);
            }
        };
        list.setOnMouseClicked(event -> go.run());
        content.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER) {
                go.run();
                event.consume();
            } else if (event.getCode() == KeyCode.DOWN && typed.isFocused()) {
                list.requestFocus();
                list.getSelectionModel().select(Math.min(1, list.getItems().size() - 1));
                event.consume();
            }
        });
        sheet.open(typed);
    }

    private List<PieceSpec> found(String typed) {
        List<String> asked = List.of(typed.strip().toLowerCase(Locale.ROOT).split("\\s+"));
        List<PieceSpec> without = inside.toPlace();
        List<PieceSpec> all = new ArrayList<>(without);
        pieces().stream().filter(piece -> !without.contains(piece)).forEach(all::add);
        return all.stream()
                .filter(piece -> {
                    String text = (piece.name() + " " + where(piece)).toLowerCase(Locale.ROOT);
                    return asked.stream().allMatch(text::contains);
                })
                .toList();
    }

    private void goTo(PieceSpec piece) {
        inside.goTo(piece.id());
        if (inside.find(piece.id()).isPresent()) {
            commands.run("view.to-selected");
        }
    }

    private String where(PieceSpec piece) {
        return inside.find(piece.id())
                .map(held -> session.now()
                                .scene()
                                .unit(held.place().unit())
                                .map(unit -> unit.name())
                                .orElse(held.place().unit())
                        + (held instanceof InRack in
                                ? ", U" + in.lowest()
                                : ", " + held.place().place()))
                .orElse("no place yet");
    }

    private final class Cell extends ListCell<PieceSpec> {
        private final Label name = new Label();
        private final Label place = new Label();
        private final VBox lines = new VBox(name, place);

        Cell() {
            place.getStyleClass().add("caption");
            setPrefWidth(0);
        }

        @Override
        protected void updateItem(@Nullable PieceSpec piece, boolean empty) {
            super.updateItem(piece, empty);
            setText(null);
            setGraphic(empty || piece == null ? null : lines);
            if (!empty && piece != null) {
                name.setText(piece.name());
                place.setText(where(piece));
                setAccessibleText(piece.name() + ", " + where(piece));
            }
        }
    }
}
