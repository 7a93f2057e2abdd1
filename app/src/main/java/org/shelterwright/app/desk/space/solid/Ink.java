package org.shelterwright.app.desk.space.solid;

import java.util.List;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;
import javafx.scene.shape.VertexFormat;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.view.Trace;

/** Lines as one mesh, laid again whenever the eye moves. */
final class Ink {
    private final Palette palette;
    private final Strokes strokes = new Strokes();
    private final MeshView view = new MeshView();
    private TriangleMesh mesh = new TriangleMesh(VertexFormat.POINT_NORMAL_TEXCOORD);
    private List<Trace> traces = List.of();
    private int[] cells = {};

    Ink(Palette palette, Palette.Coat coat) {
        this.palette = palette;
        view.setCullFace(CullFace.NONE);
        view.setMouseTransparent(true);
        wear(coat);
    }

    MeshView view() {
        return view;
    }

    void wear(Palette.Coat coat) {
        view.setMaterial(coat.material());
    }

    void show(List<Trace> lines) {
        traces = lines;
    }

    void aim(Eye eye) {
        strokes.lay(traces, eye, trace -> palette.cell(trace.pen().colour()));
        if (same()) {
            mesh.getPoints().set(0, strokes.points(), 0, 12 * strokes.count());
            return;
        }
        cells = new int[strokes.count()];
        int[] faces = new int[18 * cells.length];
        for (int i = 0; i < cells.length; i++) {
            cells[i] = strokes.cell(i);
            int at = 18 * i;
            for (int corner : new int[] {0, 1, 2, 0, 2, 3}) {
                faces[at++] = 4 * i + corner;
                faces[at++] = 0;
                faces[at++] = cells[i];
            }
        }
        mesh = Skin.mesh(strokes.points(), faces);
        view.setMesh(mesh);
    }

    private boolean same() {
        boolean same = cells.length == strokes.count();
        for (int i = 0; i < cells.length && same; i++) {
            same = cells[i] == strokes.cell(i);
        }
        return same;
    }
}
