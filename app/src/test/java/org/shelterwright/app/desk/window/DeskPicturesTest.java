package org.shelterwright.app.desk.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.app.desk.ScriptedQuestions;
import org.shelterwright.app.desk.WindowTest;
import org.shelterwright.app.look.Ground;

/** Pictures of the window, to be looked at. */
class DeskPicturesTest extends WindowTest {
    private static KeyEvent escape() {
        return new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.ESCAPE, false, false, false, false);
    }

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "1366, 768, LIGHT, 100",
        "1366, 768, DARK, 100",
        "1920, 1080, LIGHT, 100",
        "1920, 1080, DARK, 100",
        "1366, 768, LIGHT, 200"
    })
    void everyPageIsDrawnInEachLook(int width, int height, Ground ground, int text) {
        Desks.Desk desk = onDesk(() -> Desks.open("sample:river-post", folder, new ScriptedQuestions()));
        Stage stage = desk.window().stage();
        onDesk(() -> {
            stage.setX(0);
            stage.setY(0);
            stage.setWidth(width);
            stage.setHeight(height);
            desk.window().theme().ground().set(ground);
            desk.window().theme().textPercent().set(text);
            return desk.window().commands().run("ledger.worst-finding");
        });
        String name = "-" + ground.name().toLowerCase() + "-" + width + "x" + height + (text == 100 ? "" : "-" + text);

        Path fitOut = picture(stage.getScene(), "fit-out" + name);
        onDesk(() -> desk.window().commands().run("desk.page-2"));
        Path transport = picture(stage.getScene(), "transport" + name);
        onDesk(() -> desk.window().commands().run("desk.page-1"));
        onDesk(() -> desk.window().commands().run("desk.keys"));
        Path keys = picture(stage.getScene(), "keys" + name);
        onDesk(() -> {
            stage.getScene().getRoot().lookup(".sheet-over").getParent().fireEvent(escape());
            desk.window().commands().run("ledger.by-subject");
            return desk.window().commands().run("desk.find-command");
        });
        Path find = picture(stage.getScene(), "find-command" + name);
        onDesk(() -> {
            stage.hide();
            return null;
        });

        assertThat(find).isNotEmptyFile();
        assertThat(fitOut).isNotEmptyFile();
        assertThat(transport).isNotEmptyFile();
        assertThat(keys).isNotEmptyFile();
    }
}
