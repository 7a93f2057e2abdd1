package org.shelterwright.app.desk.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.app.desk.FewColours;
import org.shelterwright.app.desk.ScriptedQuestions;
import org.shelterwright.app.desk.Snapshots;
import org.shelterwright.app.desk.WindowTest;
import org.shelterwright.app.look.Ground;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.transport.edit.PutStand;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Pictures of the transport page, to be looked at in {@code target/desk}. With {@code -Ddesk.pictures.write=true} those of the guide
 * are written too.
 */
class DeskJourneyPicturesTest extends WindowTest {
    private static final Path GUIDE = Path.of("..", "docs", "pictures");

    @TempDir
    Path folder;

    private Desks.Desk desk;
    private String look = "";

    @AfterEach
    void close() {
        onDesk(() -> {
            desk.window().stage().hide();
            return null;
        });
    }

    @ParameterizedTest
    @CsvSource({
        "1366, 768, LIGHT, 100",
        "1366, 768, DARK, 100",
        "1920, 1080, LIGHT, 100",
        "1920, 1080, DARK, 100",
        "1366, 768, LIGHT, 200"
    })
    void theTransportPageIsDrawnInEachLook(int width, int height, Ground ground, int text) {
        open(width, height, ground, text);
        run("desk.page-2");
        keep("transport-begin");
        run("journey.sample");
        await(
                "the journey is open",
                () -> desk.window().journey().session().now().isPresent());
        run("journey.search");
        await("a load is found", () -> free("journey.search-take"));
        run("journey.search-take");
        keep("transport");
        onDesk(() -> {
            desk.window()
                    .journey()
                    .session()
                    .apply(new PutStand("wagon-1", "river-post", Pose.at(Point.ofMm(-900, 160, 0))));
            return null;
        });
        run("journey.next-finding");
        run("journey.next-finding");
        assertThat(onDesk(() -> desk.window().journey().rows().orElseThrow().count(Verdict.BROKEN)))
                .isPositive();
        keep("transport-clash");
    }

    private boolean inGuide(String state) {
        return state.equals("transport")
                ? !look.endsWith("-200")
                : state.equals("transport-clash")
                        && List.of("light-1366x768", "dark-1920x1080").contains(look);
    }

    private void open(int width, int height, Ground ground, int text) {
        desk = onDesk(() -> Desks.open("sample:river-post", folder, new ScriptedQuestions()));
        onDesk(() -> {
            var stage = desk.window().stage();
            stage.setX(0);
            stage.setY(0);
            stage.setWidth(width);
            stage.setHeight(height);
            desk.window().theme().ground().set(ground);
            desk.window().theme().textPercent().set(text);
            stage.toFront();
            return null;
        });
        look = ground.name().toLowerCase(Locale.ROOT) + "-" + width + "x" + height + (text == 100 ? "" : "-" + text);
    }

    private boolean free(String command) {
        return desk.window()
                .commands()
                .byId(command)
                .orElseThrow()
                .obstacle()
                .get()
                .isEmpty();
    }

    private void run(String command) {
        assertThat(onDesk(() -> desk.window().commands().run(command)))
                .as(command)
                .isEmpty();
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void keep(String state) {
        BufferedImage picture = Snapshots.of(desk.window().stage().getScene());
        assertThat(Snapshots.write(picture, Path.of("target", "desk", state + "-" + look + ".png")))
                .isNotEmptyFile();
        if (Boolean.getBoolean("desk.pictures.write") && inGuide(state)) {
            FewColours.write(picture, GUIDE.resolve("window-" + state + "-" + look + ".png"));
        }
    }
}
