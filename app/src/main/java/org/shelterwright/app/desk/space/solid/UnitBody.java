package org.shelterwright.app.desk.space.solid;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.transform.Translate;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.space.cut.Section;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.drawing.LineType;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.view.Axonometry;
import org.shelterwright.app.view.Block;
import org.shelterwright.app.view.BlockFaces;
import org.shelterwright.app.view.Facet;
import org.shelterwright.app.view.Trace;
import org.shelterwright.app.view.UnitLook;
import org.shelterwright.app.view.Weights;
import org.shelterwright.app.view.ZoneLook;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.scene.PlacedUnit;

/**
 * One unit in the scene: its solids, its edges and detail, and its clear zones on the floor. While it only moves, its
 * meshes stay and a shift carries them.
 */
final class UnitBody {
    private final Coats coats;
    private final Group solids = new Group();
    private final Group zones = new Group();
    private final Group swings = new Group();
    private final Translate shift = new Translate();
    private final Translate floorShift = new Translate();
    private final Skin skin;
    private final Ink edges;
    private final Skin zoneWash;
    private final Ink zoneLines;
    private final Ink swingLines;

    private PlacedUnit built;
    private @Nullable Situation situation;
    private @Nullable Section section;
    private List<Block> blocks = List.of();
    private @Nullable Axonometry aspect;
    private Dress dress = Dress.PLAIN;

    UnitBody(Palette palette, Coats coats, PlacedUnit unit) {
        this.coats = coats;
        this.built = unit;
        skin = new Skin(palette, coats.plain());
        edges = new Ink(palette, coats.plain());
        zoneWash = new Skin(palette, coats.plain());
        zoneLines = new Ink(palette, coats.plain());
        swingLines = new Ink(palette, coats.plain());
        solids.getChildren().addAll(skin.view(), edges.view());
        zones.getChildren().addAll(zoneWash.view(), zoneLines.view());
        swings.getChildren().add(swingLines.view());
        solids.getTransforms().add(shift);
        zones.getTransforms().add(floorShift);
        swings.getTransforms().add(floorShift);
    }

    Group solids() {
        return solids;
    }

    Group zones() {
        return zones;
    }

    Group swings() {
        return swings;
    }

    /** Shows a state of the unit; rebuilds only if it did more than move. */
    void show(PlacedUnit unit, Situation shown, @Nullable Section cut, Eye eye) {
        boolean sameShape = situation == shown
                && java.util.Objects.equals(section, cut)
                && cut == null
                && unit.item() == built.item()
                && unit.pose(shown).yaw() == built.pose(shown).yaw()
                && unit.place(shown).surface() == built.place(shown).surface();
        if (sameShape) {
            Point way = unit.pose(shown).at().minus(built.pose(shown).at());
            shift.setX(way.x() / 1e3);
            shift.setY(way.y() / 1e3);
            shift.setZ(way.z() / 1e3);
            floorShift.setX(way.x() / 1e3);
            floorShift.setY(way.y() / 1e3);
            return;
        }
        built = unit;
        situation = shown;
        section = cut;
        for (Translate each : List.of(shift, floorShift)) {
            each.setX(0);
            each.setY(0);
            each.setZ(0);
        }
        build(shown);
        aim(eye);
    }

    void dress(Dress worn) {
        if (worn == dress) {
            return;
        }
        dress = worn;
        skin.view().setVisible(filled());
        edges.wear(coats.of(worn));
        solids.setVisible(worn != Dress.HIDDEN);
    }

    void aim(Eye eye) {
        Axonometry now = eye.axonometry();
        if (aspect == null || !Block.seen(aspect).equals(Block.seen(now))) {
            aspect = now;
            List<Trace> lines = new ArrayList<>();
            for (Block block : blocks) {
                lines.addAll(block.traces());
                lines.addAll(onRoof() ? dashed(BlockFaces.edges(block, now)) : BlockFaces.edges(block, now));
            }
            if (section != null) {
                lines.addAll(section.hatch(whole()));
            }
            edges.show(lines);
        }
        edges.aim(eye);
        zoneLines.aim(eye);
        swingLines.aim(eye);
    }

    private void build(Situation shown) {
        List<Block> whole = whole();
        blocks = section == null ? whole : section.blocks(whole);
        List<Facet> caps = section == null ? List.of() : section.caps(whole);
        skin.show(blocks, caps);
        skin.view().setVisible(filled());
        aspect = null;
        ZoneLook kept = new ZoneLook();
        kept.add(built, shown, purpose -> purpose != Purpose.SWING);
        zoneWash.show(List.of(), section == null ? kept.facets() : section.facets(kept.facets()));
        zoneLines.show(left(kept.traces()));
        ZoneLook swing = new ZoneLook();
        swing.add(built, shown, purpose -> purpose == Purpose.SWING);
        swingLines.show(left(swing.traces()));
    }

    private List<Trace> left(List<Trace> traces) {
        return section == null ? traces : section.traces(traces);
    }

    private List<Block> whole() {
        return situation == null ? List.of() : UnitLook.blocks(built, situation);
    }

    private boolean filled() {
        return (dress == Dress.PLAIN || dress == Dress.CHOSEN) && !onRoof();
    }

    private boolean onRoof() {
        return situation != null && built.place(situation).surface() == Surface.ROOF;
    }

    /** What hangs from the roof is cut away with it and shown by its edges alone. */
    private static List<Trace> dashed(List<Trace> traces) {
        Pen pen = Pen.of(Weights.EDGE.width(), Role.MUTED.colour()).with(LineType.DASHED);
        return traces.stream().map(trace -> new Trace(trace.points(), pen)).toList();
    }
}
