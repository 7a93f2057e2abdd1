package org.shelterwright.app.workpack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.cli.Ran;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.layouts.asbuilt.AsBuilt;
import org.shelterwright.layouts.asbuilt.AsBuiltRecord;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.PlanKey;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.order.Schedule;

/** The tablet's work pack: what is in the file, and how it works in a real browser. */
class TabletPackTest {
    private static final PackHead HEAD =
            new PackHead("River Post", "river-post", "2026-01-15", "Planning aid.", "Planning aid, page foot");

    private final Layout layout =
            LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();
    private final Scene scene = Checker.standard().scene(layout);
    private final BoltDownPlan plan = BoltDownPlan.of(scene).orElseThrow();

    private byte[] bytes() {
        return new TabletPack(HEAD, scene, plan, Schedule.of(plan), new Typeface()).bytes();
    }

    @Test
    void isOneFileThatFetchesNothing() {
        String text = new String(bytes(), StandardCharsets.UTF_8);

        assertThat(text).startsWith("<!DOCTYPE html>").contains("default-src 'none'");
        assertThat(text.replaceAll("http://www\\.w3\\.org/2000/svg", "")).doesNotContain("http:", "https:", "src=\"");
        assertThat(text).contains("Step 1 of 27", "Telemetry rack 1 in and bolted down", "1850 from the rear wall");
        assertThat(text).contains("Planning aid.", "Caution");
    }

    @Test
    void thePackOfAPlanIsTheSameEachTime() {
        assertThat(bytes()).isEqualTo(bytes());
    }

    @Test
    void namesCannotBecomeMarkup() {
        assertThat(Html.escaped("<b>\"&'")).isEqualTo("&lt;b&gt;&quot;&amp;&#39;");
        PackHead nasty = new PackHead("</script><b>", "river-post", "2026-01-15", "c", "f");

        String text = new String(
                new TabletPack(nasty, scene, plan, Schedule.of(plan), new Typeface()).bytes(), StandardCharsets.UTF_8);

        assertThat(text).doesNotContain("</script><b>");
    }

    @Test
    void threeStepsStaySignedAndComeOutAsARecord(@TempDir(cleanup = CleanupMode.NEVER) Path folder)
            throws IOException, InterruptedException {
        assumeThat(Browser.program()).as("Chromium is installed").isPresent();
        Path file = Files.write(folder.resolve("pack.html"), bytes());
        try (Browser browser = Browser.open(Browser.program().orElseThrow(), folder.resolve("profile"), file.toUri())) {
            browser.evaluate("document.getElementById('name').value = 'R. Fitter';"
                    + " document.getElementById('name').dispatchEvent(new Event('input'))");
            assertThat(browser.evaluate("document.querySelector('[data-step=\"1\"] .do-sign').textContent")
                            .asString())
                    .endsWith("checks still open");
            browser.evaluate("document.getElementById('wrench').value = 'T-17, 2026-11';"
                    + " document.getElementById('wrench').dispatchEvent(new Event('input'))");
            for (int step = 1; step <= 3; step++) {
                String page = "document.querySelector('[data-step=\"" + step + "\"]')";
                assertThat(browser.evaluate(page + ".querySelector('.do-sign').disabled")
                                .asBoolean())
                        .isTrue();
                assertThat(browser.evaluate(page + ".querySelector('.do-sign').textContent")
                                .asString())
                        .endsWith("checks still open");
                browser.evaluate(page + ".querySelectorAll('.value').forEach(v => { v.value = '12.5';"
                        + " v.dispatchEvent(new Event('input')); })");
                browser.evaluate(page + ".querySelectorAll('input[type=checkbox]').forEach(c => c.click())");
                browser.evaluate(page + ".querySelector('.do-sign').click()");
            }
            assertThat(browser.evaluate("document.getElementById('signed').textContent")
                            .asString())
                    .isEqualTo("3 of 27 steps signed");

            browser.reload();

            assertThat(browser.evaluate("document.getElementById('signed').textContent")
                            .asString())
                    .isEqualTo("3 of 27 steps signed");
            assertThat(browser.evaluate("document.querySelector('[data-step=\"2\"] .signed').textContent")
                            .asString())
                    .startsWith("Signed by R. Fitter, 20");
            assertThat(browser.evaluate("document.querySelector('[data-step=\"2\"] .off').textContent")
                            .asString())
                    .isEqualTo("1837.5 mm off, allowed 2: measure again, or say why below");
            assertThat(browser.evaluate("document.documentElement.scrollWidth <= window.innerWidth")
                            .asBoolean())
                    .as("nothing is cut off at the side")
                    .isTrue();
            assertTouchTargets(browser);
            assertPrints(browser);
            assertExports(browser, folder);
        }
    }

    private static void assertTouchTargets(Browser browser) throws InterruptedException {
        browser.evaluate("document.querySelector('[data-go=\"2\"]').click()");
        assertThat(browser.evaluate(
                                "Math.min(...[...document.querySelectorAll('.page.shown button:not([hidden]), .page.shown"
                                        + " input, header button')].map(e => e.getBoundingClientRect().height))")
                        .asDouble())
                .as("least height of what is touched (px)")
                .isGreaterThanOrEqualTo(46);
    }

    private static void assertPrints(Browser browser) throws IOException, InterruptedException {
        byte[] pdf = browser.pdf();
        Files.createDirectories(Path.of("target/workpack"));
        Files.write(Path.of("target/workpack/printed.pdf"), pdf);
        Files.write(Path.of("target/workpack/tablet.png"), browser.picture());
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages())
                    .as("front pages, and one a step")
                    .isBetween(28, 36);
        }
    }

    private void assertExports(Browser browser, Path folder) throws IOException, InterruptedException {
        Path downloads = Files.createDirectories(folder.resolve("downloads"));
        browser.downloadsInto(downloads);
        browser.evaluate("document.getElementById('export').click()");
        Path exported = downloads.resolve("river-post-as-built.json");
        for (int i = 0; i < 100 && !Files.exists(exported); i++) {
            TimeUnit.MILLISECONDS.sleep(100);
        }
        try (Stream<Path> found = Files.list(downloads)) {
            assertThat(found).contains(exported);
        }
        AsBuiltRecord record =
                AsBuiltRecord.FORMAT.open(InputFile.read(exported)).value();
        assertThat(record.pack()).isEqualTo(PlanKey.plan(plan));
        AsBuilt built = AsBuilt.of(plan, record, layout);
        assertThat(built.voided()).isEmpty();
        assertThat(built.open().stream().filter(one -> one.endsWith(" is not signed.")))
                .hasSize(plan.steps().size() - 3);
        assertThat(built.deviations()).as("measured in the three steps").hasSizeGreaterThan(8);
        assertThat(record.steps().get(0).wrench()).isEqualTo("T-17, 2026-11");
        assertImports(browser, exported);
        Ran ran = Ran.of("weigh", "sample:river-post", "--record", exported, "--out", folder.resolve("built"));
        assertThat(ran.status()).as(ran.err()).isEqualTo(1);
        assertThat(ran.out())
                .contains(
                        "River Post, as built: ",
                        "out of tolerance, 0 void.",
                        "Step 4, Drying cupboard is not signed.");
        assertThat(folder.resolve("built/as-built.json")).exists();
        assertThat(folder.resolve("built/mass-statement.csv")).content().contains("Telemetry rack 1");
    }

    /** Another tablet takes the record over, and shows the same steps signed. */
    private static void assertImports(Browser browser, Path exported) throws IOException, InterruptedException {
        String text = Files.readString(exported).replace("\\", "\\\\").replace("`", "\\`");
        browser.evaluate("window.localStorage.clear()");
        browser.reload();
        assertThat(browser.evaluate("document.getElementById('signed').textContent")
                        .asString())
                .isEqualTo("0 of 27 steps signed");
        browser.evaluate("(() => { window.stale = true; const t = new DataTransfer();"
                + " t.items.add(new File([`" + text + "`], 'record.json', {type: 'application/json'}));"
                + " const f = document.getElementById('file'); f.files = t.files;"
                + " f.dispatchEvent(new Event('change')); })()");
        browser.awaitLoaded();
        assertThat(browser.evaluate("document.getElementById('signed').textContent")
                        .asString())
                .isEqualTo("3 of 27 steps signed");
    }

    @Test
    void thePaperPackHasACardForEachStepAndLabels() {
        WorkPack pack = WorkPack.of(HEAD, scene, plan, new Typeface());

        assertThat(pack.pages().stream().filter(page -> page.title().startsWith("Step ")))
                .as("a card each on one sheet, the power unit with all its cables too")
                .hasSameSizeAs(plan.steps());
        String all = pack.pages().stream()
                .filter(page -> page.title().equals("Step 2"))
                .flatMap(page -> page.labels().stream())
                .map(label -> label.text())
                .reduce("", (a, b) -> a + "\n" + b);
        assertThat(pack.pages().stream().flatMap(page -> page.labels().stream()).map(label -> label.text()))
                .as("who lifts, and who fills the racks")
                .contains("fitters A and B, 2 more to lift", "Racks to fill", "Cables to cut", "When all is in")
                .anyMatch(text -> text.startsWith("on the bench,"));
        assertThat(all).contains("fit its 16 pieces by the list of racks to fill", "Tools:");
        assertThat(all).contains("Step 2 of 27", "6 × M10, grade 8.8", "13 N·m", "Check and sign", "Caution");
        assertThat(pack.pages().stream().flatMap(page -> page.labels().stream()))
                .as("nothing is set below the foot")
                .allSatisfy(label -> assertThat(label.at().y()).isLessThan(292));
        assertThat(pack.labels().stream()
                        .flatMap(page -> page.labels().stream())
                        .map(label -> label.text()))
                .as("all holes have their place on their label")
                .isNotEmpty()
                .noneMatch(text -> text.startsWith("Too many"));
        assertThat(pack.lists().get(1).rows()).isNotEmpty();
    }
}
