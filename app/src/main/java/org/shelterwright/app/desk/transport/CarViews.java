package org.shelterwright.app.desk.transport;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.space.Viewpoint;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.desk.space.eye.FixedView;
import org.shelterwright.catalog.space.Box;

/** How the loaded car is looked at: the same orders as over the body, each with a twin here. */
final class CarViews {
    private static final double TURN = 15;
    private static final double TILT = 10;
    private static final double SHIFT = 60;
    private static final double ZOOM = 1.25;

    private final JourneySession session;
    private final Viewpoint viewpoint;

    CarViews(JourneySession session, Viewpoint viewpoint) {
        this.session = session;
        this.viewpoint = viewpoint;
    }

    /** What the orders of the body's view mean over the car. */
    static Map<String, String> instead() {
        Map<String, String> ids = new LinkedHashMap<>();
        for (FixedView view : FixedView.values()) {
            String word = view.name().toLowerCase(Locale.ROOT);
            ids.put("view." + word, "journey.view-" + word);
        }
        for (String way : List.of("left", "right", "up", "down")) {
            ids.put("view.turn-" + way, "journey.view-turn-" + way);
            ids.put("view.shift-" + way, "journey.view-shift-" + way);
        }
        for (String one : List.of("whole", "nearer", "farther", "projection")) {
            ids.put("view." + one, "journey.view-" + one);
        }
        ids.put("view.to-selected", "journey.show-piece");
        return ids;
    }

    void addTo(Commands commands) {
        for (FixedView view : FixedView.values()) {
            String word = view.name().toLowerCase(Locale.ROOT);
            add(commands, word, "Look at the car " + words(view), () -> viewpoint.send(view));
        }
        add(commands, "whole", "Show the whole car", viewpoint::showAll);
        add(
                commands,
                "projection",
                "Switch between parallel and perspective on the car",
                () -> viewpoint.send(
                        viewpoint.goal().withPerspective(!viewpoint.goal().perspective())));
        add(commands, "nearer", "Enlarge the view of the car", () -> zoom(ZOOM));
        add(commands, "farther", "Reduce the view of the car", () -> zoom(1 / ZOOM));
        steer(commands, "left", -TURN, 0, SHIFT, 0);
        steer(commands, "right", TURN, 0, -SHIFT, 0);
        steer(commands, "up", 0, TILT, 0, SHIFT);
        steer(commands, "down", 0, -TILT, 0, -SHIFT);
        commands.add(new Command(
                "journey.show-piece",
                "Look at the selected piece",
                List.of("view"),
                List.of(),
                () -> chosen().isEmpty()
                        ? Optional.of("Select a piece that stands on this car first.")
                        : Optional.empty(),
                () -> viewpoint.show(chosen())));
    }

    private static String words(FixedView view) {
        return view == FixedView.PICTORIAL ? "in the pictorial view" : view.words();
    }

    private List<Box> chosen() {
        Focus focus = session.focus().get();
        Set<String> pieces = focus == null ? Set.of() : focus.pieces();
        return session.load()
                .map(load -> load.pieces().stream()
                        .filter(piece -> pieces.contains(piece.id()))
                        .map(piece -> piece.box())
                        .toList())
                .orElse(List.of());
    }

    private void steer(Commands commands, String way, double azimuth, double height, double dx, double dy) {
        add(commands, "turn-" + way, "Turn the view of the car " + way, () -> {
            Eye eye = viewpoint.goal();
            viewpoint.send(eye.orbited(eye.target(), eye.azimuth() + azimuth, eye.height() + height));
        });
        add(
                commands,
                "shift-" + way,
                "Shift the view of the car " + way,
                () -> viewpoint.send(viewpoint.goal().panned(dx, dy)));
    }

    private void zoom(double factor) {
        Eye eye = viewpoint.goal();
        viewpoint.send(eye.zoomed(eye.width() / 2, eye.high() / 2, factor));
    }

    private static void add(Commands commands, String id, String name, Runnable action) {
        commands.add(
                new Command("journey.view-" + id, name, List.of("view", "car"), List.of(), Optional::empty, action));
    }
}
