package org.shelterwright.app.desk.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.control.Button;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.desk.ScriptedQuestions;
import org.shelterwright.app.desk.WindowTest;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Verdict;

/** A search from the window: started, stopped, taken over, undone. */
class DeskSearchTest extends WindowTest {
    @TempDir
    Path folder;

    private Desks.Desk desk;

    @BeforeEach
    void open() {
        desk = onDesk(() -> Desks.open("sample:river-post", folder, new ScriptedQuestions()));
    }

    @AfterEach
    void close() {
        onDesk(() -> {
            desk.window().stage().hide();
            return null;
        });
    }

    @Test
    void theBestSoFarIsKeptWhenStoppedAndCanBeTakenOverAndUndone() {
        Layout before = onDesk(() -> desk.window().session().now().layout());

        onDesk(() -> desk.window().commands().run("search.start"));
        await("the search runs", () -> "Stop, keep the best".equals(order().getText()));
        await(
                "it can be stopped",
                () -> desk.window()
                        .commands()
                        .byId("search.stop")
                        .orElseThrow()
                        .obstacle()
                        .get()
                        .isEmpty());
        onDesk(() -> desk.window().commands().run("search.stop"));
        await(
                "a layout is offered",
                () -> desk.window()
                        .commands()
                        .byId("search.take-a")
                        .orElseThrow()
                        .obstacle()
                        .get()
                        .isEmpty());
        picture(desk.window().stage().getScene(), "search-light");
        onDesk(() -> desk.window().commands().run("search.take-a"));

        assertThat(onDesk(() -> desk.window().session().now().history().undoNames()))
                .startsWith("Take over layout A");
        assertThat(onDesk(() -> desk.window().session().now().ledger().count(Verdict.BROKEN)))
                .isZero();
        assertThat(onDesk(() -> lookup("#take-a").isVisible()))
                .as("what stands is not offered")
                .isFalse();
        onDesk(() -> desk.window().commands().run("edit.undo"));
        assertThat(onDesk(() -> lookup("#take-a").isVisible())).isTrue();
        assertThat(onDesk(() -> desk.window().session().now().layout())).isEqualTo(before);
    }

    private Node lookup(String id) {
        return desk.window().stage().getScene().lookup(id);
    }

    private Button order() {
        return (Button) lookup("#search-order");
    }
}
