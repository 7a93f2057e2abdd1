package org.shelterwright.app.desk.space.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javafx.scene.Group;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.space.cut.Section;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.view.Axonometry;
import org.shelterwright.app.view.Block;
import org.shelterwright.app.view.BlockFaces;
import org.shelterwright.app.view.Facet;
import org.shelterwright.app.view.RoomLook;
import org.shelterwright.app.view.Trace;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.space.Face;

/** The body in the scene. Far walls stand, near ones are cut away: it is built again when the eye comes round a corner. */
final class RoomBody {
    private final Group group = new Group();
    private final Skin ground;
    private final Skin shell;
    private final Skin wash;
    private final Ink lines;
    private @Nullable Body body;
    private @Nullable Section section;
    private List<Face> seen = List.of();

    RoomBody(Palette palette, Coats coats) {
        ground = new Skin(palette, coats.plain());
        shell = new Skin(palette, coats.plain());
        wash = new Skin(palette, coats.plain());
        lines = new Ink(palette, coats.plain());
        group.getChildren().addAll(ground.view(), shell.view(), wash.view(), lines.view());
    }

    Group group() {
        return group;
    }

    void show(Body shown, @Nullable Section cut, Eye eye) {
        List<Face> faces = Block.seen(eye.axonometry());
        if (shown != body || !Objects.equals(cut, section) || !faces.equals(seen)) {
            body = shown;
            section = cut;
            seen = faces;
            build(shown, eye.axonometry());
            lines.aim(eye);
        }
    }

    void aim(Eye eye) {
        if (body != null) {
            show(body, section, eye);
            lines.aim(eye);
        }
    }

    private void build(Body shown, Axonometry view) {
        RoomLook look = new RoomLook(shown, view);
        List<Block> whole = new ArrayList<>(look.shell());
        whole.addAll(look.solids());
        List<Block> blocks = section == null ? whole : section.blocks(whole);
        List<Facet> facets = section == null ? look.facets() : section.facets(look.facets());
        List<Facet> solid = new ArrayList<>(
                facets.stream().filter(facet -> facet.colour().opacity() == 1).toList());
        List<Trace> traces = new ArrayList<>(section == null ? look.traces() : section.traces(look.traces()));
        for (Block block : blocks) {
            traces.addAll(block.traces());
            traces.addAll(BlockFaces.edges(block, view));
        }
        if (section != null) {
            solid.addAll(section.caps(whole));
            traces.addAll(section.hatch(whole));
        }
        List<Facet> shadow = List.of(look.shadow());
        ground.show(List.of(), section == null ? shadow : section.facets(shadow));
        shell.show(blocks, solid);
        wash.show(
                List.of(),
                facets.stream().filter(facet -> facet.colour().opacity() < 1).toList());
        lines.show(traces);
    }
}
