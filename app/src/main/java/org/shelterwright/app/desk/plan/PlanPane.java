package org.shelterwright.app.desk.plan;

import java.util.List;
import java.util.function.Supplier;
import javafx.geometry.Insets;
import javafx.scene.canvas.Canvas;
import javafx.scene.layout.Background;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.CornerRadii;
import javafx.scene.layout.Region;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.desk.paint.Worn;
import org.shelterwright.app.desk.space.Viewpoint;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.look.Role;

/** A canvas that draws the plan once a frame, however often it is asked to. */
final class PlanPane extends Region {
    private static final double INSET = 16;

    private final Canvas sheet = new Canvas();
    private final Viewpoint viewpoint;
    private final Region controls;
    private final Theme theme;
    private final ScreenCanvas canvas;
    private final Supplier<List<Shape>> shapes;
    private boolean drawn;

    PlanPane(Viewpoint viewpoint, Region controls, Theme theme, Worn worn, Supplier<List<Shape>> shapes) {
        this.viewpoint = viewpoint;
        this.theme = theme;
        this.shapes = shapes;
        this.controls = controls;
        canvas = new ScreenCanvas(sheet.getGraphicsContext2D(), worn);
        sheet.setMouseTransparent(true);
        getChildren().addAll(sheet, controls);
        setMinSize(160, 120);
        setFocusTraversable(true);
        viewpoint.eye().addListener((observable, before, now) -> redraw());
    }

    Region controls() {
        return controls;
    }

    /** Draws again at the next frame. */
    void redraw() {
        drawn = false;
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        double across = Math.max(0, getWidth() - 2 * INSET);
        double high = controls.isVisible() ? controls.prefHeight(across) : 0;
        viewpoint.coverTop(INSET + high + INSET / 2);
        viewpoint.sized(getWidth(), getHeight());
        controls.resizeRelocate(INSET, INSET, across, high);
        if (!drawn) {
            drawn = true;
            setBackground(new Background(new BackgroundFill(theme.color(Role.VIEW), CornerRadii.EMPTY, Insets.EMPTY)));
            sheet.setWidth(getWidth());
            sheet.setHeight(getHeight());
            canvas.draw(shapes.get());
        }
    }
}
