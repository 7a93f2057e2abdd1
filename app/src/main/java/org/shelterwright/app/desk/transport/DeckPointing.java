package org.shelterwright.app.desk.transport;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Point2D;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.hand.Catch;
import org.shelterwright.app.desk.space.Pointing;
import org.shelterwright.app.desk.space.Viewpoint;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/**
 * What the pointer does over a loaded car: the first button selects and drags pieces. While one is dragged, Shift moves freely, X and Y
 * hold to an axis, Enter lets go and Esc puts back.
 */
final class DeckPointing {
    private static final double DRAG = 4;
    private static final double CATCH = 10;

    private final JourneySession session;
    private final Viewpoint viewpoint;
    private final Region pane;
    private final Runnable redraw;
    private @Nullable Point2D press;
    private DeckPicker.@Nullable Met pressed;
    private @Nullable DeckDrag drag;
    private @Nullable String hovered;

    DeckPointing(JourneySession session, Viewpoint viewpoint, Region pane, Runnable redraw) {
        this.session = session;
        this.viewpoint = viewpoint;
        this.pane = pane;
        this.redraw = redraw;
        pane.addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
        pane.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
        pane.addEventHandler(MouseEvent.MOUSE_RELEASED, this::released);
        pane.addEventHandler(MouseEvent.MOUSE_MOVED, this::moved);
        pane.addEventHandler(MouseEvent.MOUSE_EXITED, event -> hover(null));
        pane.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        pane.addEventHandler(KeyEvent.KEY_RELEASED, event -> free(event, false));
    }

    List<Catch> catches() {
        return drag == null ? List.of() : drag.catches();
    }

    /** Id of the piece under the pointer; {@code null} if none, or while one is dragged. */
    @Nullable
    String hovered() {
        return drag == null ? hovered : null;
    }

    private void pressed(MouseEvent event) {
        pane.requestFocus();
        if (event.getButton() == MouseButton.PRIMARY && !event.isAltDown()) {
            press = new Point2D(event.getX(), event.getY());
            pressed = met(event).orElse(null);
        }
    }

    private void dragged(MouseEvent event) {
        Point2D from = press;
        DeckPicker.Met met = pressed;
        if (from == null || met == null || !event.isPrimaryButtonDown()) {
            return;
        }
        Eye eye = viewpoint.now();
        if (drag == null && from.distance(event.getX(), event.getY()) >= DRAG) {
            select(met.piece().id(), false);
            PlacedLoad load = session.load().orElseThrow();
            drag = new DeckDrag(
                    session, load, met.piece(), met.place(), Math.min(10_000, CATCH / eye.scaleAt(met.place())));
            pane.getStyleClass().add(Pointing.STEERED);
        }
        if (drag != null) {
            drag.freely(event.isShiftDown());
            drag.to(eye.ray(event.getX(), event.getY()));
            redraw.run();
        }
    }

    private void released(MouseEvent event) {
        if (event.getButton() != MouseButton.PRIMARY || press == null) {
            return;
        }
        if (drag != null) {
            drag.drop();
        } else if (pressed != null) {
            select(pressed.piece().id(), event.isShortcutDown());
        } else if (!event.isShortcutDown()) {
            session.look(focus -> focus.onPieces(Set.of()).onFinding(null));
        }
        end();
    }

    private void select(String piece, boolean toggle) {
        session.look(focus -> {
            Set<String> chosen = new LinkedHashSet<>(toggle ? focus.pieces() : Set.of());
            if (!chosen.add(piece)) {
                chosen.remove(piece);
            }
            return focus.onPieces(chosen);
        });
    }

    private void moved(MouseEvent event) {
        hover(met(event).map(met -> met.piece().id()).orElse(null));
    }

    private void hover(@Nullable String piece) {
        if (!java.util.Objects.equals(piece, hovered)) {
            hovered = piece;
            redraw.run();
        }
    }

    private void key(KeyEvent event) {
        DeckDrag going = drag;
        if (going == null) {
            return;
        }
        if (event.getCode() == KeyCode.ESCAPE) {
            going.cancel();
            end();
        } else if (event.getCode() == KeyCode.ENTER) {
            going.drop();
            end();
        } else if (event.getCode() == KeyCode.X || event.getCode() == KeyCode.Y) {
            going.only(event.getCode() == KeyCode.X ? Axis.X : Axis.Y);
        } else {
            free(event, true);
            return;
        }
        redraw.run();
        event.consume();
    }

    private void free(KeyEvent event, boolean on) {
        if (drag != null && event.getCode() == KeyCode.SHIFT) {
            drag.freely(on);
            redraw.run();
            event.consume();
        }
    }

    private void end() {
        press = null;
        pressed = null;
        drag = null;
        pane.getStyleClass().remove(Pointing.STEERED);
        redraw.run();
    }

    private Optional<DeckPicker.Met> met(MouseEvent event) {
        return session.load()
                .flatMap(load -> DeckPicker.first(load, viewpoint.now().ray(event.getX(), event.getY())));
    }
}
