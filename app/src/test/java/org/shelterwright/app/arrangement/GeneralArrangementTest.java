package org.shelterwright.app.arrangement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shelterwright.app.TestIssue;
import org.shelterwright.app.TestLayout;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

class GeneralArrangementTest {

    private final Typeface typeface = new Typeface();

    static Stream<Layout> layouts() {
        return Stream.of(
                TestLayout.riverPost(),
                TestLayout.crowded(40),
                TestLayout.crowded(80),
                sample("river-post"),
                sample("water-lab"));
    }

    private static Layout sample(String name) {
        return LayoutFiles.read(Samples.layout(name).orElseThrow()).layout();
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void noTextLiesOverAnotherAndAllLieOnTheSheet(Layout layout) {
        for (Drawing sheet : sheets(TestIssue.of(layout))) {
            List<Label> labels = sheet.labels();
            Bounds paper = new Bounds(0, 0, sheet.width(), sheet.height());
            for (int i = 0; i < labels.size(); i++) {
                Bounds bounds = tight(labels.get(i));
                assertThat(paper.contains(bounds)).as(labels.get(i).text()).isTrue();
                for (int j = 0; j < i; j++) {
                    assertThat(bounds.overlaps(tight(labels.get(j))))
                            .as(
                                    "\"%s\" over \"%s\" at %s",
                                    labels.get(i).text(), labels.get(j).text(), bounds.centre())
                            .isFalse();
                }
            }
        }
    }

    @Test
    void runningDimensionsTellThePosesOfUnits() {
        TestIssue issue = TestIssue.riverPost();
        List<String> texts =
                sheets(issue).get(0).labels().stream().map(Label::text).toList();

        for (PlacedUnit unit : issue.scene().units()) {
            Point at = unit.pose(Situation.ON_STATION).at();
            assertThat(texts).as(unit.name()).contains(Numerals.mm(at.x()), unit.name());
            assertThat(at.y() == 0 || texts.contains(Numerals.mm(at.y()))).isTrue();
        }
    }

    @Test
    void theLargestStandardScaleThatFitsIsTaken() {
        SheetPlan plan = SheetPlan.of(TestIssue.riverPost().scene().body(), 16);

        assertThat(plan.size()).isEqualTo(SheetSize.A2);
        assertThat(plan.scale()).isEqualTo(20);
        assertThat(SheetPlan.outside(
                                plan.fromAbove(), TestIssue.riverPost().scene().body())
                        .width())
                .isCloseTo(4320 / 20.0, within(1e-9));
    }

    /** ISO 5456-2, first-angle projection: the view from above lies under the principal view, in line with it. */
    @Test
    void viewsLieInFirstAngleProjection() {
        Scene scene = TestIssue.riverPost().scene();
        SheetPlan plan = SheetPlan.of(scene.body(), 16);
        Bounds principal = SheetPlan.outside(plan.fromRight(), scene.body());
        Bounds above = SheetPlan.outside(plan.fromAbove(), scene.body());
        Bounds rear = SheetPlan.outside(plan.fromRear(), scene.body());

        assertThat(above.x0()).isEqualTo(principal.x0());
        assertThat(above.y0()).isGreaterThan(principal.y1());
        assertThat(rear.y0()).isEqualTo(principal.y0());
        assertThat(rear.x0()).isGreaterThan(principal.x1());
    }

    @Test
    void everyUnitHasAReferenceInThePlan() {
        TestIssue issue = TestIssue.riverPost();
        List<String> texts =
                sheets(issue).get(0).labels().stream().map(Label::text).toList();

        for (int number = 1; number <= issue.scene().units().size(); number++) {
            String reference = Integer.toString(number);
            assertThat(texts.stream().filter(reference::equals).count())
                    .as("once in the parts list, once in the plan at least: " + reference)
                    .isGreaterThanOrEqualTo(2);
        }
    }

    @Test
    void whatIsStowedElsewhereHasASheetOfTheRoad() {
        TestIssue issue = TestIssue.riverPost();
        List<Drawing> without = sheets(issue);

        List<Drawing> with =
                sheets(issue, new GeneralArrangement.Road(Point.ofMm(2000, 1142, 512), List.of("Drawn on the road.")));

        assertThat(with).hasSize(without.size() + 1);
        List<String> last =
                with.get(with.size() - 1).labels().stream().map(Label::text).toList();
        assertThat(last).contains("Drawn on the road.").anyMatch(text -> text.endsWith(", on the road"));
        assertThat(with.get(0).labels().stream().map(Label::text)).anyMatch(text -> text.endsWith(", on station"));
        assertThat(last).contains("From above, roof cut away, on the road", with.size() + " / " + with.size());
    }

    private List<Drawing> sheets(TestIssue issue) {
        return sheets(issue, null);
    }

    private List<Drawing> sheets(TestIssue issue, GeneralArrangement.Road road) {
        return new GeneralArrangement(typeface)
                .sheets(
                        issue.scene(),
                        Situation.ON_STATION,
                        new GeneralArrangement.Told(
                                issue.particulars(),
                                Point.ofMm(2214, 1142, 512),
                                List.of(
                                        "A first note.",
                                        "A second note that is long enough to run over more than one line."),
                                road,
                                "Shelterwright 0"));
    }

    /** Letters themselves: capitals and figures, without the room for accents and descenders. */
    private Bounds tight(Label label) {
        Bounds all = typeface.bounds(label);
        double cut = label.size() * 0.08;
        return label.turn() == 0
                ? new Bounds(all.x0(), all.y0() + cut, all.x1(), all.y1() - cut)
                : new Bounds(all.x0() + cut, all.y0(), all.x1() - cut, all.y1());
    }
}
