package org.shelterwright.app.desk.space.solid;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import javafx.scene.AmbientLight;
import javafx.scene.Group;
import javafx.scene.SubScene;
import javafx.scene.paint.Color;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.space.cut.Section;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.view.Facet;
import org.shelterwright.app.view.Trace;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * The scene of solids. Shows one resolved layout after the other and touches only what changed.
 */
public final class World implements Aimed {
    private final Palette palette = new Palette();
    private final Function<Colour, Color> worn;
    private final Coats coats;
    private final Group solids = new Group();
    private final Group zones = new Group();
    private final Group swings = new Group();
    private final RoomBody room;
    private final Skin patches;
    private final Ink patchLines;
    private final Map<String, UnitBody> units = new LinkedHashMap<>();
    private final Lens lens;
    private Eye eye;
    private @Nullable Scene shown;
    private @Nullable Situation situation;
    private @Nullable Section section;

    public World(Function<Colour, Color> worn, Eye eye) {
        this.worn = worn;
        this.eye = eye;
        coats = new Coats(palette, worn);
        room = new RoomBody(palette, coats);
        patches = new Skin(palette, coats.plain());
        patchLines = new Ink(palette, coats.plain());
        Group root = new Group(
                room.group(), patches.view(), patchLines.view(), solids, zones, swings, new AmbientLight(Color.WHITE));
        lens = new Lens(root, eye);
        paint();
    }

    @Override
    public SubScene view() {
        return lens.view();
    }

    public Group zones() {
        return zones;
    }

    public Group swings() {
        return swings;
    }

    /** Shows a scene; units that did not change are not touched. */
    public void show(Scene scene, Situation now, @Nullable Section cut) {
        Set<String> gone = new HashSet<>(units.keySet());
        boolean all = now != situation || !java.util.Objects.equals(cut, section);
        for (PlacedUnit unit : scene.units()) {
            gone.remove(unit.id());
            boolean same = !all && shown != null && shown.unit(unit.id()).orElse(null) == unit;
            if (!same) {
                body(unit).show(unit, now, cut, eye);
            }
        }
        gone.forEach(this::remove);
        room.show(scene.body(), cut, eye);
        shown = scene;
        situation = now;
        section = cut;
    }

    /** Lays patches and lines on the floor, in place of those that lie there. */
    public void lay(List<Facet> facets, List<Trace> traces) {
        patches.show(List.of(), section == null ? facets : section.facets(facets));
        patchLines.show(section == null ? traces : section.traces(traces));
        patchLines.aim(eye);
    }

    /** How each unit is dressed. */
    public void dress(Function<String, Dress> dresses) {
        units.forEach((id, body) -> {
            Dress dress = dresses.apply(id);
            body.dress(dress);
            body.zones().setVisible(dress != Dress.HIDDEN && dress != Dress.X_RAY);
            body.swings().setVisible(dress != Dress.HIDDEN && dress != Dress.X_RAY);
        });
    }

    @Override
    public void aim(Eye from) {
        eye = from;
        lens.aim(from);
        room.aim(from);
        patchLines.aim(from);
        units.values().forEach(body -> body.aim(from));
    }

    /** Paints all colours again, after a change of the theme. */
    public void paint() {
        palette.paint();
        lens.view().setFill(worn.apply(Role.VIEW.colour()));
    }

    private UnitBody body(PlacedUnit unit) {
        UnitBody known = units.get(unit.id());
        if (known != null) {
            return known;
        }
        UnitBody made = new UnitBody(palette, coats, unit);
        units.put(unit.id(), made);
        solids.getChildren().add(made.solids());
        zones.getChildren().add(made.zones());
        swings.getChildren().add(made.swings());
        return made;
    }

    private void remove(String unit) {
        UnitBody body = units.remove(unit);
        if (body != null) {
            solids.getChildren().remove(body.solids());
            zones.getChildren().remove(body.zones());
            swings.getChildren().remove(body.swings());
        }
    }
}
