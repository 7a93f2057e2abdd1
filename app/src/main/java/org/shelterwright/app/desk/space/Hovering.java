package org.shelterwright.app.desk.space;

import java.util.Objects;
import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.geometry.Point3D;
import javafx.scene.input.MouseEvent;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.pick.Hit;
import org.shelterwright.app.desk.space.pick.Picker;
import org.shelterwright.app.drawing.Spot;

/** What lies under the pointer while nothing is pressed, and whether it rests there long enough to be told the name. */
final class Hovering {
    private static final Duration REST = Duration.millis(400);

    private final Session session;
    private final Showing showing;
    private final Viewpoint viewpoint;
    private final Runnable redraw;
    private final PauseTransition rest = new PauseTransition(REST);
    private @Nullable String unit;
    private @Nullable Spot naming;
    private @Nullable Point3D place;

    Hovering(Session session, Showing showing, Viewpoint viewpoint, Runnable redraw) {
        this.session = session;
        this.showing = showing;
        this.viewpoint = viewpoint;
        this.redraw = redraw;
    }

    /** The unit under the pointer. */
    @Nullable
    String unit() {
        return unit;
    }

    /** Where the pointer rests. */
    @Nullable
    Spot naming() {
        return naming;
    }

    /** The place that was pointed at last (mm). */
    Optional<Point3D> place() {
        return Optional.ofNullable(place);
    }

    void moved(MouseEvent event) {
        Picker picker = showing.picker(session);
        var ray = viewpoint.now().ray(event.getX(), event.getY());
        place = picker.any(ray).map(Hit::place).orElse(null);
        over(picker.unit(ray).map(Hit::unit).orElse(null));
        Spot pointer = new Spot(event.getX() / ScreenCanvas.PIXELS, event.getY() / ScreenCanvas.PIXELS);
        rest.setOnFinished(done -> {
            naming = unit == null ? null : pointer;
            redraw.run();
        });
        rest.playFromStart();
    }

    void away() {
        over(null);
    }

    private void over(@Nullable String other) {
        boolean change = !Objects.equals(other, unit) || naming != null;
        unit = other;
        naming = null;
        if (other == null) {
            rest.stop();
        }
        if (change) {
            redraw.run();
        }
    }
}
