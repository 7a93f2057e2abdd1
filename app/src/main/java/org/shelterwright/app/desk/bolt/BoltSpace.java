package org.shelterwright.app.desk.bolt;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.shape.SVGPath;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.paint.Worn;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.Showing;
import org.shelterwright.app.desk.space.SpacePane;
import org.shelterwright.app.desk.space.Steering;
import org.shelterwright.app.desk.space.Viewpoint;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.desk.space.eye.FixedView;
import org.shelterwright.app.desk.space.mark.Glass;
import org.shelterwright.app.desk.space.mark.WayMarks;
import org.shelterwright.app.desk.space.pick.Picker;
import org.shelterwright.app.desk.space.solid.Dress;
import org.shelterwright.app.desk.space.solid.World;
import org.shelterwright.app.desk.style.Icon;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.ways.Passage;

/** The body as far as it is fitted out, with the unit that is brought in and its way. */
final class BoltSpace {
    private static final String TICK = "M 0 4 L 3.5 8 L 10 0";

    private final BoltDesk desk;
    private final Session session;
    private final Theme theme;
    private final Viewpoint viewpoint;
    private final World world;
    private final SpacePane pane;
    private final Typeface typeface = new Typeface();
    private final BooleanProperty ways = new SimpleBooleanProperty(true);
    private final BooleanProperty toCome = new SimpleBooleanProperty(true);
    private final Button play = new Button();
    private Scene shown;

    BoltSpace(BoltDesk desk, Player player, Commands commands, Theme theme) {
        this.desk = desk;
        this.session = desk.session();
        this.theme = theme;
        shown = session.now().scene();
        viewpoint = new Viewpoint(session, FixedView.PICTORIAL);
        Worn worn = new Worn(theme);
        world = new World(worn, viewpoint.now());
        world.zones().setVisible(false);
        pane = new SpacePane(world, viewpoint, controls(commands, player), worn, this::shapes);
        pane.setId("bolt-space");
        pane.setAccessibleText("View of the body as far as it is fitted out. The steps are also in the list.");
        new Steering(viewpoint, new Showing(), session, pane, true);
        theme.onChange(() -> {
            world.paint();
            pane.redraw();
        });
        desk.stand().addListener((observable, before, now) -> show());
        desk.at().addListener((observable, before, now) -> show());
        ways.addListener((observable, before, now) -> pane.redraw());
        toCome.addListener((observable, before, now) -> pane.redraw());
        show();
    }

    Region node() {
        return pane;
    }

    Viewpoint viewpoint() {
        return viewpoint;
    }

    private Region controls(Commands commands, Player player) {
        HBox row = new HBox(
                6,
                order(commands, "bolt.previous", Icon.BACK),
                play(commands, player),
                order(commands, "bolt.next", Icon.ON),
                chip("Way in", ways),
                chip("Steps to come", toCome));
        row.setAlignment(Pos.CENTER_LEFT);
        row.setPickOnBounds(false);
        return row;
    }

    private static Button order(Commands commands, String id, Icon icon) {
        Button button = new Button(null, icon.node(20));
        button.setId(id.replace('.', '-'));
        button.setOnAction(event -> commands.run(id));
        commands.byId(id).ifPresent(command -> {
            button.setAccessibleText(command.name());
            button.setTooltip(new Tooltip(command.name()));
        });
        return button;
    }

    private Button play(Commands commands, Player player) {
        play.setId("bolt-play");
        play.setOnAction(event -> commands.run("bolt.play"));
        Runnable show = () -> {
            boolean going = player.playing().get();
            play.setGraphic((going ? Icon.STOP : Icon.START).node(20));
            play.setAccessibleText(going ? "Stop" : "Show how everything comes in");
        };
        player.playing().addListener((observable, before, now) -> show.run());
        show.run();
        return play;
    }

    private static ToggleButton chip(String words, BooleanProperty on) {
        ToggleButton chip = new ToggleButton(words);
        SVGPath tick = new SVGPath();
        tick.setContent(TICK);
        tick.getStyleClass().addAll("icon", "accent-icon");
        tick.setStrokeWidth(1.75);
        tick.visibleProperty().bind(on);
        tick.managedProperty().bind(on);
        chip.setGraphic(tick);
        chip.getStyleClass().add("chip");
        chip.selectedProperty().bindBidirectional(on);
        chip.setAccessibleText("Show " + words.toLowerCase(java.util.Locale.ROOT));
        return chip;
    }

    private void show() {
        shown = scene();
        world.show(shown, Situation.ON_STATION, null);
        Map<String, Integer> numbers = numbers();
        int number = desk.number();
        boolean begun = desk.at().get() > number - 1 || desk.at().get() == number;
        world.dress(unit -> {
            int its = numbers.getOrDefault(unit, Integer.MAX_VALUE);
            return its < number || its == number && begun ? its == number ? Dress.CHOSEN : Dress.PLAIN : Dress.HIDDEN;
        });
        world.zones().setVisible(false);
        pane.redraw();
    }

    private Map<String, Integer> numbers() {
        Map<String, Integer> numbers = new TreeMap<>();
        BoltDownPlan plan = desk.stand().get().plan();
        if (plan != null) {
            plan.steps().forEach(step -> numbers.put(step.unit().id(), step.number()));
        }
        return numbers;
    }

    /** The scene with the unit of the step where it is on its way. */
    private Scene scene() {
        Scene scene = session.now().scene();
        BoltDownStep step = desk.step().orElse(null);
        if (step == null || scene.unit(step.unit().id()).isEmpty()) {
            return scene;
        }
        Placement placement = scene.unit(step.unit().id()).orElseThrow().placement();
        var pose = new Course(step.passage()).pose(desk.along());
        return scene.after(
                scene.layout().with(placement.withStation(placement.station().with(pose))));
    }

    private List<Shape> shapes() {
        Glass glass = new Glass(viewpoint.now(), theme.textPercent().get() / 100.0);
        WayMarks marks = new WayMarks(glass, typeface);
        BoltDownPlan plan = desk.stand().get().plan();
        if (plan == null) {
            return marks.shapes();
        }
        int number = desk.number();
        List<WayMarks.Named> in = new ArrayList<>();
        List<WayMarks.Named> coming = new ArrayList<>();
        for (BoltDownStep step : plan.steps()) {
            PlacedUnit unit = step.unit();
            String digits = String.valueOf(step.number());
            Box outline = unit.outline(Situation.ON_STATION);
            if (step.number() <= number) {
                in.add(new WayMarks.Named(unit.id(), outline, List.of(digits + " " + unit.name(), digits)));
            } else {
                coming.add(new WayMarks.Named(unit.id(), outline, List.of(digits)));
            }
        }
        if (toCome.get()) {
            marks.coming(coming);
        }
        Map<String, Integer> numbers = numbers();
        Picker picker = new Picker(
                shown, Situation.ON_STATION, unit -> numbers.getOrDefault(unit, Integer.MAX_VALUE) <= number, null);
        marks.in(in, one -> seen(picker, one, viewpoint.now()));
        desk.step().ifPresent(step -> marks.way(way(step)));
        return marks.shapes();
    }

    private static boolean seen(Picker picker, WayMarks.Named one, Eye eye) {
        Point top = one.box().face(Face.TOP).centre();
        Eye.Seen at = eye.project(new javafx.geometry.Point3D(top.x() / 1e3, top.y() / 1e3, top.z() / 1e3));
        return picker.unit(eye.ray(at.x(), at.y()))
                .filter(hit -> hit.unit().equals(one.unit()))
                .isPresent();
    }

    private WayMarks.Way way(BoltDownStep step) {
        List<Box> now = shown.unit(step.unit().id())
                .map(unit -> unit.solids(Situation.ON_STATION))
                .orElse(List.of());
        Passage passage = step.passage();
        List<List<Box>> ghosts = new ArrayList<>();
        List<Point> line = new ArrayList<>();
        if (ways.get() && passage.free()) {
            for (int i = passage.legs().size() - 1; i >= 0; i--) {
                List<Box> leg = passage.legs().get(i);
                if (i > 0) {
                    ghosts.add(leg);
                }
                line.add(foot(leg));
            }
        }
        String words = ways.get() ? new Course(passage).lastWords() : "";
        return new WayMarks.Way(now, ghosts, line, words);
    }

    private static Point foot(List<Box> solids) {
        int x0 = solids.stream().mapToInt(Box::x0).min().orElse(0);
        int x1 = solids.stream().mapToInt(Box::x1).max().orElse(0);
        int y0 = solids.stream().mapToInt(Box::y0).min().orElse(0);
        int y1 = solids.stream().mapToInt(Box::y1).max().orElse(0);
        int z0 = solids.stream().mapToInt(Box::z0).min().orElse(0);
        return new Point(x0 + (x1 - x0) / 2, y0 + (y1 - y0) / 2, z0);
    }
}
