package org.shelterwright.app.desk.inside;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.scene.canvas.Canvas;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Background;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.CornerRadii;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.desk.paint.Worn;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.edit.Edit;
import org.shelterwright.layouts.inside.Held;
import org.shelterwright.layouts.ledger.Row;

/** The drawing of what is open, to be worked in with the pointer. What is dragged is tried out, and kept when it is let go. */
final class InsideSketch extends Region {
    private static final double DRAG = 4;
    private static final double LEAST_UNIT = 20;
    private static final double KEPT = 1.7;
    private static final Pen CHOSEN = Pen.of(0.7, Role.ACCENT.colour());
    private static final Pen BROKEN = Pen.of(0.6, Role.BROKEN.colour());

    private final InsideDesk desk;
    private final InsideFindings findings;
    private final Session session;
    private final Theme theme;
    private final Typeface typeface = new Typeface();
    private final Canvas canvas = new Canvas();
    private final ScreenCanvas sheet;
    private @Nullable Spot press;
    private @Nullable String held;
    private @Nullable Edit latest;
    private boolean drawn;

    InsideSketch(InsideDesk desk, InsideFindings findings, Theme theme) {
        this.desk = desk;
        this.findings = findings;
        this.theme = theme;
        session = desk.session();
        sheet = new ScreenCanvas(canvas.getGraphicsContext2D(), new Worn(theme));
        canvas.setMouseTransparent(true);
        getChildren().add(canvas);
        setId("inside-sketch");
        setFocusTraversable(true);
        setAccessibleText("Drawing of the inside. Every piece in it is also in the list beside it.");
        addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
        addEventHandler(MouseEvent.MOUSE_DRAGGED, event -> to(new Spot(mm(event.getX()), mm(event.getY()))));
        addEventHandler(MouseEvent.MOUSE_RELEASED, event -> drop());
    }

    /** Draws again at the next frame. */
    void redraw() {
        drawn = false;
        setMinHeight(
                desk.bay().map(bay -> bay.units() * theme.sized(LEAST_UNIT)).orElse(120.0));
        requestLayout();
    }

    /** Takes hold of a piece that has no place. */
    void carry(String piece) {
        held = piece;
        press = null;
        latest = null;
    }

    /** A place on the screen, for what is carried here from elsewhere (px of the scene). */
    void to(double sceneX, double sceneY) {
        var at = sceneToLocal(sceneX, sceneY);
        to(new Spot(mm(at.getX()), mm(at.getY())));
    }

    /** Keeps what is held where it is. */
    void drop() {
        String piece = held;
        if (piece != null && session.now().tryingOut()) {
            if (session.now().layout().equals(session.now().history().current())) {
                session.giveUp();
            } else {
                session.keep("Drag " + desk.name(piece));
                desk.chosen().set(piece);
            }
        }
        held = null;
        press = null;
        latest = null;
    }

    /** Puts what is held back; gives whether anything was. */
    boolean cancel() {
        boolean was = held != null && session.now().tryingOut();
        held = null;
        press = null;
        latest = null;
        session.giveUp();
        return was;
    }

    @Override
    protected void layoutChildren() {
        boolean same = canvas.getWidth() == getWidth() && canvas.getHeight() == getHeight();
        if (!drawn || !same) {
            drawn = true;
            setBackground(new Background(new BackgroundFill(theme.color(Role.VIEW), CornerRadii.EMPTY, Insets.EMPTY)));
            canvas.setWidth(getWidth());
            canvas.setHeight(getHeight());
            sheet.draw(drawing().map(this::shapes).orElse(List.of()));
        }
    }

    private Optional<InsideDrawing> drawing() {
        Bounds paper = new Bounds(0, 0, mm(getWidth()), mm(getHeight()));
        Optional<InsideDrawing> rack = desk.bay().map(bay -> new RackDrawing(desk, bay, paper, typeface));
        return rack.or(() -> desk.stowage().map(stowage -> new PlaceDrawing(desk, stowage, paper, typeface)));
    }

    private List<Shape> shapes(InsideDrawing drawing) {
        List<Shape> shapes = new ArrayList<>(drawing.shapes());
        List<Row> broken = findings.broken();
        for (Held piece : desk.held()) {
            boolean marked = broken.stream().anyMatch(row -> findings.shows(row, piece));
            boolean chosen = piece.id().equals(desk.chosen().get());
            for (Bounds bounds : drawing.bounds(piece)) {
                if (piece.place().kept()) {
                    shapes.add(Lettering.in(
                            Lettering.of("kept", new Spot(bounds.x1() - 3.5, bounds.y0() + 2 + KEPT / 2), KEPT)
                                    .with(Align.END),
                            Role.ACCENT.colour()));
                }
                if (marked) {
                    shapes.add(Polygon.of(bounds, Role.BROKEN.colour().with(0.16), BROKEN));
                }
                if (chosen) {
                    shapes.add(Polygon.of(bounds.grown(0.3), null, CHOSEN));
                }
            }
        }
        return shapes;
    }

    private void pressed(MouseEvent event) {
        requestFocus();
        // The pane that scrolls would take the focus.
        event.consume();
        if (event.getButton() != MouseButton.PRIMARY) {
            return;
        }
        Spot at = new Spot(mm(event.getX()), mm(event.getY()));
        Held piece = drawing().flatMap(drawing -> drawing.pieceAt(at)).orElse(null);
        desk.chosen().set(piece == null ? null : piece.id());
        press = piece == null ? null : at;
        held = piece == null ? null : piece.id();
        latest = null;
    }

    private void to(Spot at) {
        String piece = held;
        Spot from = press;
        boolean still = from != null
                && latest == null
                && Math.hypot(at.x() - from.x(), at.y() - from.y()) < DRAG / ScreenCanvas.PIXELS;
        if (piece == null || still) {
            return;
        }
        Edit edit =
                drawing().flatMap(drawing -> drawing.dragged(piece, from, at)).orElse(null);
        if (edit == null) {
            session.giveUp();
        } else if (!edit.equals(latest)) {
            session.tryOut(edit);
        }
        latest = edit;
    }

    private static double mm(double px) {
        return px / ScreenCanvas.PIXELS;
    }
}
