package org.shelterwright.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.TestIssue;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.tables.Table;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.air.HeatBalance;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.power.PowerNet;
import org.shelterwright.layouts.samples.Samples;

class ServicePagesTest {
    private static final Issue RIVER_POST = issue(TestIssue.of(
            LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout()));
    private static final Issue UNSTATED = issue(TestIssue.riverPost());

    private static Issue issue(TestIssue of) {
        return new Issue(of.scene(), of.ledger(), of.particulars(), "Shelterwright 0.1.0");
    }

    private static String text(List<Drawing> pages) {
        StringBuilder text = new StringBuilder();
        pages.forEach(page -> page.shapes().forEach(shape -> {
            if (shape instanceof Label label) {
                text.append(label.text()).append('\n');
            }
        }));
        return text.toString().replace('\u2009', ' ');
    }

    @Test
    void theLoadListHasEachSupplyWithItsUnitsAndStates() {
        String text = text(new LoadListPages(new Typeface(), RIVER_POST).pages());

        assertThat(text)
                .contains("Loads of Mains 230 V", "Loads of Battery 24 V", "Loads of Inverter 230 V")
                .contains("on station, generator off", "Feeds Inverter 230 V", "Telemetry rack 1", "(240)")
                .contains("Screen 1, Screen 2: one work place must stay usable when one supply fails.");
        assertThat(text.replaceAll("\\s+", " ")).contains(Issue.CAUTION);
    }

    @Test
    void theHeatBalanceHasGainsLossesAndTheHeatPassageOfTheBody() {
        String text = text(new HeatPages(new Typeface(), RIVER_POST).pages());

        assertThat(text).contains("People, moisture", "Cooling installed and on", "Heat passage of the body", "35.3");
        assertThat(text.replaceAll("\\s+", " ")).contains(Issue.CAUTION);
    }

    @Test
    void sheetsOfABriefWithoutServicesSayWhatIsMissing() {
        String heat = text(new HeatPages(new Typeface(), UNSTATED).pages()).replaceAll("\\s+", " ");

        assertThat(heat)
                .contains("not assessed: The brief states no operating state with its weather. Give states and their");
        assertThat(text(new LoadListPages(new Typeface(), UNSTATED).pages())).contains("Limits of power");
    }

    @Test
    void theTablesHaveARowForEachUnitAndLineInEachState() {
        PowerNet net = PowerNet.of(RIVER_POST.scene());
        Table loads = LoadTables.loads(net);

        assertThat(loads.rows()).hasSize(4 * 11);
        assertThat(loads.rows())
                .anySatisfy(row -> assertThat(row.stream().map(Objects::toString))
                        .startsWith("on station, generator off", "Inverter 230 V", "rack-2")
                        .contains("idle", "240.0"));
        assertThat(LoadTables.supplies(net).rows()).hasSize(4 * 3);
        assertThat(HeatTable.of(HeatBalance.of(RIVER_POST.scene())).rows()).hasSize(4);
    }
}
