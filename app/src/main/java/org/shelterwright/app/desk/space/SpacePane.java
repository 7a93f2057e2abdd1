package org.shelterwright.app.desk.space;

import java.util.List;
import java.util.function.Supplier;
import javafx.scene.canvas.Canvas;
import javafx.scene.layout.Region;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.desk.paint.Worn;
import org.shelterwright.app.desk.space.solid.Aimed;
import org.shelterwright.app.drawing.Shape;

/**
 * The scene of solids with the drawing over it and controls over both. However often it is asked to show something else
 * between two frames, it aims and draws once.
 */
public final class SpacePane extends Region {
    /** Style class of a view, by which it is found when a page is turned to. */
    public static final String VIEW = "view";

    private static final double INSET = 16;

    private final Aimed world;
    private final Viewpoint viewpoint;
    private final Region controls;
    private final Canvas glass = new Canvas();
    private final ScreenCanvas canvas;
    private final Supplier<List<Shape>> over;
    private boolean aimed;
    private boolean drawn;

    /** @param over what lies over the scene, asked once a frame at most */
    public SpacePane(Aimed world, Viewpoint viewpoint, Region controls, Worn worn, Supplier<List<Shape>> over) {
        this.world = world;
        this.viewpoint = viewpoint;
        this.controls = controls;
        this.over = over;
        canvas = new ScreenCanvas(glass.getGraphicsContext2D(), worn);
        glass.setMouseTransparent(true);
        getChildren().addAll(world.view(), glass, controls);
        setMinSize(160, 120);
        setFocusTraversable(true);
        getStyleClass().add(VIEW);
        viewpoint.eye().addListener((observable, before, now) -> {
            aimed = false;
            redraw();
        });
    }

    /** Draws what lies over the scene again at the next frame. */
    public void redraw() {
        drawn = false;
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        double across = Math.max(0, getWidth() - 2 * INSET);
        double high = controls.prefHeight(across);
        viewpoint.coverTop(INSET + high + INSET / 2);
        viewpoint.sized(getWidth(), getHeight());
        if (!aimed) {
            aimed = true;
            world.aim(viewpoint.now());
        }
        controls.resizeRelocate(INSET, INSET, across, high);
        if (!drawn) {
            drawn = true;
            glass.setWidth(getWidth());
            glass.setHeight(getHeight());
            canvas.draw(over.get());
        }
    }
}
