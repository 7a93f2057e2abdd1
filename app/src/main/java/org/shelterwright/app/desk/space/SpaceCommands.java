package org.shelterwright.app.desk.space;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import javafx.geometry.Point3D;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.cut.Section;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.desk.space.eye.FixedView;
import org.shelterwright.app.desk.space.mark.Overlay;
import org.shelterwright.app.desk.space.measure.Distance;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.scene.PlacedUnit;

/** What can be done in the views of the body without changing the layout. */
public final class SpaceCommands {
    private static final double TURN = 15;
    private static final double TILT = 10;
    private static final double ZOOM = 1.25;
    private static final double SHIFT = 60;
    private static final int SECTION_STEP = 50_000;

    private final Session session;
    private final Showing showing;
    private final Supplier<Viewpoint> viewpoint;
    private final Supplier<Optional<String>> flat;
    private final List<Command> commands = new ArrayList<>();

    private SpaceCommands(
            Session session, Showing showing, Supplier<Viewpoint> viewpoint, Supplier<Optional<String>> flat) {
        this.session = session;
        this.showing = showing;
        this.viewpoint = viewpoint;
        this.flat = flat;
    }

    /**
     * @param viewpoint of the view that is worked in
     * @param flat why the view cannot be turned or cut now; empty if it can
     */
    public static List<Command> all(
            Session session, Showing showing, Supplier<Viewpoint> viewpoint, Supplier<Optional<String>> flat) {
        SpaceCommands all = new SpaceCommands(session, showing, viewpoint, flat);
        all.views();
        all.steering();
        all.sight();
        all.section();
        all.measuring();
        for (Overlay overlay : Overlay.values()) {
            all.add(
                    id(overlay),
                    "Show or hide " + overlay.words().toLowerCase(Locale.ROOT),
                    "",
                    () -> showing.show(overlay, !showing.overlays().contains(overlay)));
        }
        return all.commands;
    }

    /** The id of the command that shows or hides what is laid over the views. */
    static String id(Overlay overlay) {
        return "view.overlay-" + overlay.words().toLowerCase(Locale.ROOT).replace(' ', '-');
    }

    private void views() {
        for (FixedView view : FixedView.values()) {
            String name = view == FixedView.PICTORIAL ? "Look at the pictorial view" : "Look " + view.words();
            String id = "view." + view.name().toLowerCase(Locale.ROOT);
            add(id, name, Integer.toString(view.ordinal() + 1), flat, () -> aimed().send(view));
        }
        add("view.whole", "Show the whole body", "Home", () -> aimed().showAll());
        add(
                "view.projection",
                "Switch between parallel and perspective",
                "V",
                flat,
                () -> aimed().send(
                                aimed().goal().withPerspective(!aimed().goal().perspective())));
        whenSelected(
                "view.to-selected",
                "Look at what is selected",
                "L",
                () -> aimed().show(selected().stream()
                        .map(unit -> unit.outline(session.situation().get()))
                        .toList()));
        add(
                "view.to-finding",
                "Look at the place of the finding",
                "Shift+L",
                this::finding,
                () -> place().ifPresent(box -> aimed().show(List.of(box))));
    }

    private void steering() {
        turn("left", "Ctrl+Shift+Left", -TURN, 0);
        turn("right", "Ctrl+Shift+Right", TURN, 0);
        turn("up", "Ctrl+Shift+Up", 0, TILT);
        turn("down", "Ctrl+Shift+Down", 0, -TILT);
        shift("left", "Ctrl+Alt+Left", SHIFT, 0);
        shift("right", "Ctrl+Alt+Right", -SHIFT, 0);
        shift("up", "Ctrl+Alt+Up", 0, SHIFT);
        shift("down", "Ctrl+Alt+Down", 0, -SHIFT);
        add("view.nearer", "Enlarge the view", "Plus", () -> zoom(ZOOM));
        add("view.farther", "Reduce the view", "Minus", () -> zoom(1 / ZOOM));
    }

    private void sight() {
        whenSelected(
                "view.isolate",
                "Show the selected alone",
                "I",
                () -> showing.sight()
                        .set(showing.sight()
                                .get()
                                .isolating(session.selection().units().get())));
        whenSelected(
                "view.hide",
                "Hide the selected",
                "H",
                () -> showing.sight()
                        .set(showing.sight()
                                .get()
                                .hiding(session.selection().units().get())));
        add(
                "view.x-ray",
                "Look through what is not selected",
                "G",
                () -> showing.sight()
                        .set(showing.sight()
                                .get()
                                .withXRay(!showing.sight().get().xRay())));
        add("view.show-all", "Show all units", "Shift+H", () -> showing.sight().set(Sight.ALL));
    }

    private void section() {
        cut("along", "Cut the space across its length", "Alt+X", Axis.X);
        cut("across", "Cut the space along its length", "Alt+Y", Axis.Y);
        cut("level", "Cut the space level", "Alt+Z", Axis.Z);
        Supplier<Optional<String>> none = () -> showing.section().get() == null
                ? Optional.of("No section plane is set: cut the space first.")
                : Optional.empty();
        add("view.section-on", "Move the section plane forward, left or up", "Alt+Shift+Page Up", none, () -> move(1));
        add(
                "view.section-back",
                "Move the section plane back, right or down",
                "Alt+Shift+Page Down",
                none,
                () -> move(-1));
        add("view.section-turn", "Take away the other side of the section plane", "Shift+Home", none, () -> {
            Section cut = showing.section().get();
            showing.section()
                    .set(cut == null ? null : new Section(cut.at(), cut.away().opposite()));
        });
        add(
                "view.section-off",
                "Close the section plane",
                "Shift+End",
                none,
                () -> showing.section().set(null));
    }

    private void measuring() {
        add(
                "view.measure",
                "Measure by pointing",
                "D",
                () -> showing.measuring().set(!showing.measuring().get()));
        add(
                "view.measure-nearest",
                "Measure between the two selected",
                "Shift+D",
                () -> selected().size() == 2 ? Optional.empty() : Optional.of("Select two units first."),
                () -> {
                    List<PlacedUnit> two = selected();
                    Distance nearest = Distance.nearest(
                            two.get(0).solids(session.situation().get()),
                            two.get(1).solids(session.situation().get()));
                    if (nearest != null) {
                        showing.distances().add(nearest);
                    }
                });
        add(
                "view.measure-clear",
                "Clear all distances",
                "Ctrl+Shift+M",
                () -> showing.distances().isEmpty()
                        ? Optional.of("There are no distances to clear.")
                        : Optional.empty(),
                () -> showing.distances().clear());
    }

    private void cut(String id, String name, String keys, Axis axis) {
        add("view.section-" + id, name, keys, flat, () -> {
            Section set = showing.section().get();
            if (set != null && set.axis() == axis) {
                showing.section().set(null);
                return;
            }
            Box in = session.now().scene().body().inside().box();
            int middle = (in.low(axis) + in.high(axis)) / 2;
            showing.section().set(new Section(middle, near(axis)));
        });
    }

    /** The face of the body on the viewer's side. */
    private Face near(Axis axis) {
        Point3D to = aimed().goal().towards();
        return switch (axis) {
            case X -> to.getX() > 0 ? Face.FRONT : Face.REAR;
            case Y -> to.getY() > 0 ? Face.LEFT : Face.RIGHT;
            case Z -> Face.TOP;
        };
    }

    private void move(int sign) {
        Section cut = showing.section().get();
        if (cut != null) {
            Box in = session.now().scene().body().inside().box();
            int to = Math.max(in.low(cut.axis()), Math.min(in.high(cut.axis()), cut.at() + sign * SECTION_STEP));
            showing.section().set(cut.moved(to));
        }
    }

    private void turn(String way, String keys, double azimuth, double height) {
        add("view.turn-" + way, "Turn the view " + way, keys, flat, () -> {
            Eye eye = aimed().goal();
            aimed().send(eye.orbited(eye.target(), eye.azimuth() + azimuth, eye.height() + height));
        });
    }

    private void shift(String way, String keys, double dx, double dy) {
        add(
                "view.shift-" + way,
                "Shift the view " + way,
                keys,
                () -> aimed().send(aimed().goal().panned(dx, dy)));
    }

    private void zoom(double factor) {
        Eye eye = aimed().goal();
        aimed().send(eye.zoomed(eye.width() / 2, eye.high() / 2, factor));
    }

    private Viewpoint aimed() {
        return viewpoint.get();
    }

    private Optional<String> finding() {
        return place().isPresent()
                ? Optional.empty()
                : Optional.of("No finding with a place is chosen: choose one in the ledger.");
    }

    private Optional<Box> place() {
        return Optional.ofNullable(session.selection().finding().get())
                .flatMap(finding -> finding.in(session.now().ledger()))
                .flatMap(row -> Optional.ofNullable(row.place()));
    }

    private List<PlacedUnit> selected() {
        Set<String> units = session.selection().units().get();
        return units.stream()
                .flatMap(id -> session.now().scene().unit(id).stream())
                .toList();
    }

    private void whenSelected(String id, String name, String keys, Runnable action) {
        add(
                id,
                name,
                keys,
                () -> selected().isEmpty() ? Optional.of("Select a placed unit first.") : Optional.empty(),
                action);
    }

    private void add(String id, String name, String keys, Runnable action) {
        add(id, name, keys, Optional::empty, action);
    }

    private void add(String id, String name, String keys, Supplier<Optional<String>> obstacle, Runnable action) {
        commands.add(
                new Command(id, name, List.of("view"), keys.isEmpty() ? List.of() : List.of(keys), obstacle, action));
    }
}
