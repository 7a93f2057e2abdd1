package org.shelterwright.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.TestIssue;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.sheet.Particulars;
import org.shelterwright.app.tables.Table;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.lifting.LiftPlan;
import org.shelterwright.layouts.ledger.restraint.RestraintSheet;
import org.shelterwright.layouts.samples.Samples;

/** The restraint sheet and the lifting sheet. */
class HoldingPagesTest {
    private static final Issue RIVER_POST = sample("river-post");
    private static final RestraintSheet SHEET = RestraintSheet.of(RIVER_POST.scene());

    private static Issue sample(String name) {
        Layout layout = LayoutFiles.read(Samples.layout(name).orElseThrow()).layout();
        Checker checker = Checker.standard();
        return new Issue(
                checker.scene(layout),
                checker.check(layout),
                new Particulars("Owner", "R. Fitter", "not approved", "A", LocalDate.of(2026, 1, 15)),
                "Shelterwright 0.1.0");
    }

    private static String text(List<Drawing> pages) {
        return pages.stream()
                .flatMap(page -> page.labels().stream())
                .map(Label::text)
                .collect(Collectors.joining(" "));
    }

    @Test
    void theRestraintSheetShowsEveryBoltedUnitWithCautionCasesAndTorque() {
        String text = text(new RestraintPages(new Typeface(), RIVER_POST, SHEET).pages());

        assertThat(text)
                .contains("Restraint, lifting, electrical work", "road (EN 12195-1)", "1.25 / 1.1", "Loose units");
        assertThat(SHEET.groups())
                .hasSize(25)
                .allMatch(group -> text.contains(group.unit().name()));
        assertThat(SHEET.loose()).hasSize(2);
        assertThat(text).contains("Telemetry rack 1 on the floor", "floor raster", "N·m", "met, use 0.");
    }

    @Test
    void theTableHasOneRowForEachFixing() {
        Table table = RestraintTable.of(SHEET);

        int fixings = SHEET.groups().stream()
                .mapToInt(group -> group.fixings().size())
                .sum();
        assertThat(table.rows()).hasSize(fixings);
        assertThat(table.rows().get(0)).startsWith("rack-1", "Telemetry rack 1", "the floor");
    }

    @Test
    void theLiftingSheetShowsLegsOffsetAndCautions() {
        String text = text(new LiftingPages(new Typeface(), RIVER_POST, LiftPlan.of(RIVER_POST.scene())).pages());

        assertThat(text)
                .contains(
                        "Restraint, lifting, electrical work",
                        "front left upper lifting eye",
                        "Nobody stands under the load")
                .contains("the eyes would bear up to ", "from above, front to the right");
        assertThat(LiftingTable.of(LiftPlan.of(RIVER_POST.scene())).rows()).hasSize(4);
    }

    @Test
    void withoutLoadCasesOrEyesTheSheetsSaySo() {
        TestIssue test = TestIssue.riverPost();
        Issue issue = new Issue(test.scene(), test.ledger(), test.particulars(), "Shelterwright 0.1.0");

        String restraint = text(new RestraintPages(new Typeface(), issue, RestraintSheet.of(issue.scene())).pages());
        String lifting = text(new LiftingPages(new Typeface(), issue, LiftPlan.of(issue.scene())).pages());

        assertThat(restraint).contains("None is set: nothing could be assessed.");
        assertThat(lifting).contains("states no four lifting eyes");
        assertThat(LiftingTable.of(LiftPlan.of(issue.scene())).rows()).isEmpty();
    }
}
