package org.shelterwright.app.gltf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.javagl.jgltf.model.AccessorFloatData;
import de.javagl.jgltf.model.GltfModel;
import de.javagl.jgltf.model.MeshPrimitiveModel;
import de.javagl.jgltf.model.NodeModel;
import de.javagl.jgltf.model.io.GltfModelReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.TestIssue;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

class GlbTest {

    private final Scene scene = TestIssue.riverPost().scene();

    @Test
    void anIndependentReaderFindsEveryUnitAtItsPlaceInMetresWithYUp() throws IOException {
        GltfModel model = new GltfModelReader()
                .readWithoutReferences(new ByteArrayInputStream(Glb.write(scene, Situation.ON_STATION, "test")));

        for (PlacedUnit unit : scene.units()) {
            List<NodeModel> nodes = model.getNodeModels().stream()
                    .filter(node -> unit.name().equals(node.getName()))
                    .toList();
            assertThat(nodes).as(unit.name()).hasSize(1);
            MeshPrimitiveModel faces =
                    nodes.get(0).getMeshModels().get(0).getMeshPrimitiveModels().get(0);
            AccessorFloatData positions =
                    (AccessorFloatData) faces.getAttributes().get("POSITION").getAccessorData();
            Box outline =
                    unit.solids(Situation.ON_STATION).stream().reduce(Box::hull).orElseThrow();
            float[] least = positions.computeMin();
            float[] most = positions.computeMax();
            assertThat((double) least[0]).isCloseTo(outline.y0() * 1e-6, within(1e-6));
            assertThat((double) least[1]).isCloseTo(outline.z0() * 1e-6, within(1e-6));
            assertThat((double) least[2]).isCloseTo(outline.x0() * 1e-6, within(1e-6));
            assertThat((double) most[0]).isCloseTo(outline.y1() * 1e-6, within(1e-6));
            assertThat((double) most[1]).isCloseTo(outline.z1() * 1e-6, within(1e-6));
            assertThat((double) most[2]).isCloseTo(outline.x1() * 1e-6, within(1e-6));
        }
    }

    @Test
    void facesLookOutward() throws IOException {
        GltfModel model = new GltfModelReader()
                .readWithoutReferences(new ByteArrayInputStream(Glb.write(scene, Situation.ON_STATION, "test")));

        model.getMeshModels().forEach(mesh -> {
            MeshPrimitiveModel faces = mesh.getMeshPrimitiveModels().get(0);
            AccessorFloatData at =
                    (AccessorFloatData) faces.getAttributes().get("POSITION").getAccessorData();
            AccessorFloatData normals =
                    (AccessorFloatData) faces.getAttributes().get("NORMAL").getAccessorData();
            var indices =
                    (de.javagl.jgltf.model.AccessorIntData) faces.getIndices().getAccessorData();
            for (int i = 0; i < indices.getNumElements(); i += 3) {
                int a = indices.get(i, 0);
                double[] cross = cross(at, a, indices.get(i + 1, 0), indices.get(i + 2, 0));
                double dot = 0;
                for (int axis = 0; axis < 3; axis++) {
                    dot += cross[axis] * normals.get(a, axis);
                }
                assertThat(dot).isPositive();
            }
        });
    }

    /** glTF 2.0, section 4.4: magic, version, length, then chunks padded to four bytes. */
    @Test
    void theContainerFollowsTheStandard() {
        byte[] bytes = Glb.write(scene, Situation.ON_STATION, "test");
        ByteBuffer file = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);

        assertThat(file.getInt(0)).isEqualTo(0x46546C67);
        assertThat(file.getInt(4)).isEqualTo(2);
        assertThat(file.getInt(8)).isEqualTo(bytes.length);
        assertThat(file.getInt(12) % 4).isZero();
        assertThat(Glb.write(scene, Situation.ON_STATION, "test")).isEqualTo(bytes);
    }

    private static double[] cross(AccessorFloatData at, int a, int b, int c) {
        double[] u = new double[3];
        double[] v = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            u[axis] = at.get(b, axis) - at.get(a, axis);
            v[axis] = at.get(c, axis) - at.get(a, axis);
        }
        return new double[] {u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]};
    }
}
