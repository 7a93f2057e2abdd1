package org.shelterwright.app.desk.space;

import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.desk.space.measure.Distance;
import org.shelterwright.app.desk.space.measure.Mark;

/** Takes distances from click to click while it is measured. */
final class Gauging {
    private final Session session;
    private final Showing showing;
    private final Viewpoint viewpoint;
    private @Nullable Mark begun;

    Gauging(Session session, Showing showing, Viewpoint viewpoint) {
        this.session = session;
        this.showing = showing;
        this.viewpoint = viewpoint;
        showing.measuring().addListener((observable, before, now) -> begun = null);
    }

    /** The first end of a distance that is being taken. */
    @Nullable
    Mark begun() {
        return begun;
    }

    /** Takes what is shown at a spot of the view as an end, if anything is. */
    void take(double x, double y) {
        Eye eye = viewpoint.now();
        showing.picker(session).any(eye.ray(x, y)).ifPresent(hit -> {
            Mark mark = Mark.of(hit, eye);
            Mark first = begun;
            if (first == null) {
                begun = mark;
            } else {
                begun = null;
                showing.distances().add(Distance.between(first, mark));
            }
        });
    }
}
