package org.shelterwright.app.desk.space.solid;

import java.util.List;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;
import javafx.scene.shape.VertexFormat;
import org.shelterwright.app.view.Block;
import org.shelterwright.app.view.Facet;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/** The faces of blocks, and flat patches, as one mesh (mm). */
final class Skin {
    private final Palette palette;
    private final MeshView view = new MeshView();

    Skin(Palette palette, Palette.Coat coat) {
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

    void show(List<Block> blocks, List<Facet> facets) {
        int count = facets.stream().mapToInt(facet -> facet.corners().size()).sum() + 24 * blocks.size();
        float[] points = new float[3 * count];
        int triangles = 12 * blocks.size()
                + facets.stream()
                        .mapToInt(facet -> Math.max(0, facet.corners().size() - 2))
                        .sum();
        int[] faces = new int[9 * triangles];
        Filler filler = new Filler(points, faces);
        for (Block block : blocks) {
            for (Face face : Face.values()) {
                filler.add(
                        Block.corners(block.box(), face),
                        palette.cell(block.shade().of(face)));
            }
        }
        facets.forEach(facet -> filler.add(facet.corners(), palette.cell(facet.colour())));
        view.setMesh(mesh(points, faces));
    }

    /** A new mesh: the toolkit does not take other counts into one that it has drawn. */
    static TriangleMesh mesh(float[] points, int[] faces) {
        TriangleMesh mesh = new TriangleMesh(VertexFormat.POINT_NORMAL_TEXCOORD);
        mesh.getNormals().setAll(0, 0, 1);
        mesh.getTexCoords().setAll(Palette.places());
        mesh.getPoints().setAll(points);
        mesh.getFaces().setAll(faces);
        return mesh;
    }

    private static final class Filler {
        private final float[] points;
        private final int[] faces;
        private int point;
        private int face;

        Filler(float[] points, int[] faces) {
            this.points = points;
            this.faces = faces;
        }

        void add(List<Point> corners, int cell) {
            int first = point;
            for (Point corner : corners) {
                points[3 * point] = corner.x() / 1000f;
                points[3 * point + 1] = corner.y() / 1000f;
                points[3 * point + 2] = corner.z() / 1000f;
                point++;
            }
            for (int i = 1; i + 1 < corners.size(); i++) {
                for (int corner : new int[] {first, first + i, first + i + 1}) {
                    faces[face++] = corner;
                    faces[face++] = 0;
                    faces[face++] = cell;
                }
            }
        }
    }
}
