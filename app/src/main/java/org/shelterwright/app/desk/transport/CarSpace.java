package org.shelterwright.app.desk.transport;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javafx.beans.property.BooleanProperty;
import javafx.geometry.Point2D;
import javafx.geometry.Point3D;
import javafx.geometry.Pos;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.shape.SVGPath;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.paint.Worn;
import org.shelterwright.app.desk.space.SpacePane;
import org.shelterwright.app.desk.space.Steering;
import org.shelterwright.app.desk.space.Viewpoint;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.desk.space.eye.FixedView;
import org.shelterwright.app.desk.space.solid.Dress;
import org.shelterwright.app.desk.space.solid.Thing;
import org.shelterwright.app.desk.space.solid.Things;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.view.Block;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** The car that is looked at with what stands on it: seen from anywhere, pointed at, changed by hand. */
final class CarSpace {
    private static final String TICK = "M 0 4 L 3.5 8 L 10 0";
    private static final double MARGIN = 64;
    private static final String CAR = "/car";
    private static final String OUTLINE = "/outline";
    private static final String BLOCKS = "/blocks";
    private static final String ROPES = "/ropes";

    private final JourneySession session;
    private final Overlays overlays = new Overlays();
    private final Viewpoint viewpoint = new Viewpoint(this::places, FixedView.PICTORIAL);
    private final Things things;
    private final SpacePane pane;
    private final DeckPointing pointing;
    private final CarGlass glass;
    private @Nullable String shown;

    CarSpace(JourneySession session, Theme theme) {
        this.session = session;
        Worn worn = new Worn(theme);
        things = new Things(worn, viewpoint.now());
        pane = new SpacePane(things, viewpoint, chips(), worn, () -> glass().shapes());
        pane.setId("car-space");
        pane.setAccessibleText("View of the car with what stands on it. Every piece is also in the list of what goes.");
        pointing = new DeckPointing(session, viewpoint, pane, pane::redraw);
        glass = new CarGlass(session, viewpoint, overlays, pointing, theme);
        new Steering(
                viewpoint,
                ray -> session.load()
                        .flatMap(load -> DeckPicker.first(load, ray))
                        .map(DeckPicker.Met::place),
                this::middle,
                pane,
                true);
        session.standing().addListener((observable, before, now) -> show());
        session.focus().addListener((observable, before, now) -> show());
        overlays.onChange(this::show);
        theme.onChange(() -> {
            things.paint();
            pane.redraw();
        });
        show();
    }

    Region node() {
        return pane;
    }

    void addTo(Commands commands) {
        new CarViews(session, viewpoint).addTo(commands);
    }

    Viewpoint viewpoint() {
        return viewpoint;
    }

    Overlays overlays() {
        return overlays;
    }

    /** Where a place of the car (µm) is seen, on the screen (px). */
    Point2D onScreen(Point place) {
        Eye.Seen seen = viewpoint.now().project(mm(place));
        return pane.localToScreen(seen.x(), seen.y());
    }

    private CarGlass glass() {
        return glass;
    }

    private void show() {
        PlacedLoad load = session.load().orElse(null);
        LegScene leg = session.leg().orElse(null);
        if (load == null || leg == null) {
            things.show(List.of());
            shown = null;
            pane.redraw();
            return;
        }
        things.show(things(leg, load));
        Set<String> chosen =
                session.focus().get() == null ? Set.of() : session.focus().get().pieces();
        things.dress(id -> chosen.contains(id) ? Dress.CHOSEN : Dress.PLAIN);
        if (!load.id().equals(shown)) {
            shown = load.id();
            viewpoint.set(FixedView.fitted(viewpoint.now(), places(), MARGIN));
        }
        pane.redraw();
    }

    private List<Thing> things(LegScene leg, PlacedLoad load) {
        List<Thing> all = new ArrayList<>();
        all.add(CarLook.of(load.car(), CAR));
        load.pieces().forEach(piece -> all.add(PieceLook.of(piece)));
        if (overlays.blocking().get()) {
            all.add(HoldLook.of(load, BLOCKS));
        }
        if (overlays.lashings().get()) {
            all.add(RopeLook.of(leg, load, ROPES));
        }
        if (overlays.outline().get()) {
            Integer at = OutlineLook.tightest(leg, load)
                    .map(tight -> Integer.valueOf(tight.fit().at()))
                    .orElse(null);
            OutlineLook.of(leg, load, OUTLINE, at).ifPresent(all::add);
        }
        return all;
    }

    private List<Point3D> places() {
        List<Point3D> places = new ArrayList<>();
        Optional<PlacedLoad> load = session.load();
        Box car = load.map(one -> CarLook.bounds(one.car())).orElse(new Box(0, 0, 0, 6_000_000, 2_500_000, 2_000_000));
        Block.corners(car).forEach(corner -> places.add(mm(corner)));
        for (PlacedPiece piece : load.map(PlacedLoad::pieces).orElse(List.of())) {
            Block.corners(piece.box()).forEach(corner -> places.add(mm(corner)));
        }
        return places;
    }

    private Point3D middle() {
        Box car = session.load()
                .map(one -> CarLook.bounds(one.car()))
                .orElse(new Box(0, 0, 0, 6_000_000, 2_500_000, 2_000_000));
        return mm(car.centre());
    }

    private Region chips() {
        FlowPane row = new FlowPane(
                8,
                8,
                chip("Outline", overlays.outline()),
                chip("Lashings", overlays.lashings()),
                chip("Wheel loads", overlays.wheels()),
                chip("Centres of mass", overlays.centres()),
                chip("Blocking", overlays.blocking()));
        row.setAlignment(Pos.CENTER_LEFT);
        row.setPickOnBounds(false);
        return row;
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
        chip.setAccessibleText("Show " + words.toLowerCase(Locale.ROOT));
        return chip;
    }

    private static Point3D mm(Point point) {
        return new Point3D(point.x() / 1e3, point.y() / 1e3, point.z() / 1e3);
    }
}
