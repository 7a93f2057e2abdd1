package org.shelterwright.app.desk.space.solid;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.view.Block;
import org.shelterwright.app.view.BlockFaces;
import org.shelterwright.app.view.Trace;
import org.shelterwright.catalog.space.Face;

/** One thing in the scene: its faces and lines. Built again only when it changed. */
final class ThingBody {
    private final Coats coats;
    private final Group group = new Group();
    private final Skin skin;
    private final Ink ink;
    private @Nullable Thing built;
    private List<Face> seen = List.of();

    ThingBody(Palette palette, Coats coats) {
        this.coats = coats;
        skin = new Skin(palette, coats.plain());
        ink = new Ink(palette, coats.plain());
        group.getChildren().addAll(skin.view(), ink.view());
    }

    Group group() {
        return group;
    }

    void show(Thing thing, Eye eye) {
        if (!thing.equals(built)) {
            built = thing;
            skin.show(thing.blocks(), thing.facets());
            seen = List.of();
            aim(eye);
        }
    }

    void dress(Dress dress) {
        group.setVisible(dress != Dress.HIDDEN);
        skin.view().setVisible(dress != Dress.X_RAY);
        ink.wear(coats.of(dress));
    }

    void aim(Eye eye) {
        List<Face> faces = Block.seen(eye.axonometry());
        Thing thing = built;
        if (thing != null && !faces.equals(seen)) {
            seen = faces;
            List<Trace> lines = new ArrayList<>(thing.traces());
            for (Block block : thing.blocks()) {
                lines.addAll(block.traces());
                lines.addAll(BlockFaces.edges(block, eye.axonometry()));
            }
            ink.show(lines);
        }
        ink.aim(eye);
    }
}
