package org.shelterwright.app.desk.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javafx.scene.control.CheckBox;
import javafx.scene.control.TableView;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.app.desk.FewColours;
import org.shelterwright.app.desk.ScriptedQuestions;
import org.shelterwright.app.desk.Snapshots;
import org.shelterwright.app.desk.WindowTest;
import org.shelterwright.app.desk.study.PostRuns;
import org.shelterwright.app.desk.study.StudyPart;
import org.shelterwright.app.look.Ground;
import org.testfx.util.WaitForAsyncUtils;

/** The results of a study in a real window. */
class DeskStudyTest extends WindowTest {
    @TempDir
    Path folder;

    private Desks.Desk desk;

    private void open(int width, int height, Ground ground) throws IOException {
        show(width, height, ground, PostRuns.run(folder).path());
    }

    private void show(int width, int height, Ground ground, Path study) {
        desk = onDesk(() -> Desks.open("sample:river-post", folder, new ScriptedQuestions()));
        onDesk(() -> {
            Stage stage = desk.window().stage();
            stage.setX(0);
            stage.setY(0);
            stage.setWidth(width);
            stage.setHeight(height);
            desk.window().theme().ground().set(ground);
            Objects.requireNonNull(desk.window().studies()).open(study);
            return null;
        });
        await("the study is there", () -> studies().part().isPresent());
    }

    private StudyPage studies() {
        return Objects.requireNonNull(desk.window().studies());
    }

    private StudyPart part() {
        return studies().part().orElseThrow();
    }

    @AfterEach
    void close() {
        onDesk(() -> {
            desk.window().stage().hide();
            return null;
        });
    }

    private void run(String command) {
        assertThat(onDesk(() -> desk.window().commands().run(command)))
                .as(command)
                .isEmpty();
        WaitForAsyncUtils.waitForFxEvents();
    }

    private <T> T find(String id, Class<T> type) {
        return type.cast(Objects.requireNonNull(desk.window().stage().getScene().lookup(id), id));
    }

    @Test
    void filtersChoosesComparesAndOpensARun() throws IOException {
        open(1366, 768, Ground.LIGHT);
        TableView<?> table = onDesk(() -> find("#study-runs", TableView.class));
        assertThat(onDesk(() -> table.getItems().size())).isEqualTo(12);

        onDesk(() -> {
            find("#study-verdict-refused", CheckBox.class).fire();
            return null;
        });
        assertThat(onDesk(() -> table.getItems().size())).isEqualTo(8);
        assertThat(onDesk(() -> desk.window().commands().run("study.compare")))
                .contains("Choose two to 4 runs; none is chosen.");

        onDesk(() -> {
            table.getSelectionModel().select(0);
            table.getSelectionModel().select(4);
            return null;
        });
        assertThat(onDesk(() -> part().board().chosen().get())).hasSize(2);
        run("study.compare");
        await("the comparison is there", () -> part().comparing());
        Snapshots.keep(desk.window().stage().getScene(), "study-comparison");
        run("study.back");
        assertThat(onDesk(() -> part().comparing())).isFalse();

        onDesk(() -> {
            part().board().choose(List.of(7));
            return null;
        });
        run("study.layout");
        await(
                "the layout is on the desk",
                () -> desk.window().session().now().layout().body().id().equals("box-6000"));
        assertThat(onDesk(() -> studies().part())).isEmpty();
        assertThat(onDesk(() -> desk.window().session().now().layout().placements()))
                .hasSize(3);
    }

    /** The pictures of the guide, if a folder with results is named; otherwise of the small study. */
    @ParameterizedTest
    @CsvSource({"1366, 768, LIGHT", "1366, 768, DARK", "1920, 1080, LIGHT", "1920, 1080, DARK"})
    void isDrawnInEachLook(int width, int height, Ground ground) throws IOException {
        String study = System.getProperty("desk.study");
        if (study == null) {
            open(width, height, ground);
        } else {
            show(width, height, ground, Path.of(study));
        }
        onDesk(() -> {
            var shown = part().board().shown().stream()
                    .filter(one -> one.refused() == null)
                    .toList();
            part().board()
                    .choose(List.of(
                            shown.get(0).run(), shown.get(shown.size() - 1).run()));
            return null;
        });
        String look = ground.name().toLowerCase(Locale.ROOT) + "-" + width + "x" + height;
        keep("study", look);
        run("study.compare");
        await("the comparison is there", () -> part().comparing());
        keep("study-compared", look);
    }

    /** Of the page the guide has every look and size; of the comparison one light and one dark. */
    private void keep(String state, String look) {
        BufferedImage picture = Snapshots.of(desk.window().stage().getScene());
        String name = "window-" + state + "-" + look + ".png";
        assertThat(Snapshots.write(picture, Path.of("target", "desk", name))).isNotEmptyFile();
        boolean inGuide = state.equals("study")
                || List.of("light-1366x768", "dark-1920x1080").contains(look);
        if (Boolean.getBoolean("desk.pictures.write") && inGuide) {
            FewColours.write(picture, Path.of("..", "docs", "pictures", name));
        }
    }
}
