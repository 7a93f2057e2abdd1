package org.shelterwright.app.workpack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.samples.Samples;

class BoltPatternTest {
    @ParameterizedTest
    @ValueSource(strings = {"river-post", "water-lab"})
    void everyNumberCanBeReadInsideTheSketch(String sample) {
        Layout layout = LayoutFiles.read(Samples.layout(sample).orElseThrow()).layout();
        Bounds paper = new Bounds(10, 10, 60, 30);
        for (BoltDownStep step :
                BoltDownPlan.of(Checker.standard().scene(layout)).orElseThrow().steps()) {
            List<Circle> rings = BoltPattern.shapes(step, paper).stream()
                    .filter(Circle.class::isInstance)
                    .map(Circle.class::cast)
                    .toList();
            for (int i = 0; i < rings.size(); i++) {
                assertThat(paper.contains(rings.get(i).centre()))
                        .as(step.unit().name())
                        .isTrue();
                for (int j = 0; j < i; j++) {
                    double x = rings.get(i).centre().x() - rings.get(j).centre().x();
                    double y = rings.get(i).centre().y() - rings.get(j).centre().y();
                    assertThat(Math.hypot(x, y))
                            .as("%s, rings %d and %d", step.unit().name(), i, j)
                            .isGreaterThanOrEqualTo(2 * rings.get(i).radius() - 1e-9);
                }
            }
        }
    }
}
