package org.shelterwright.app.desk.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.desk.WindowTest;
import org.shelterwright.app.desk.ask.Questions;
import org.shelterwright.app.desk.style.Theme;

class WindowQuestionsTest extends WindowTest {
    private Stage owner;
    private Questions questions;

    @BeforeEach
    void open() {
        onDesk(() -> {
            owner = new Stage();
            owner.setScene(new Scene(new StackPane(), 800, 600));
            owner.show();
            questions = new WindowQuestions(owner, new Theme());
            return null;
        });
    }

    @AfterEach
    void close() {
        onDesk(() -> {
            owner.hide();
            return null;
        });
    }

    @Test
    void enterGivesTheUsualAnswer() throws Exception {
        CompletableFuture<Optional<Integer>> answer =
                ask(() -> questions.choose("Save first?", "Two changes are not saved.", List.of("Save", "Drop them")));
        picture(dialog().getScene(), "question");

        robot.type(KeyCode.ENTER);

        assertThat(answer.get(20, TimeUnit.SECONDS)).contains(0);
    }

    @Test
    void escapePutsAQuestionAway() throws Exception {
        CompletableFuture<Optional<Integer>> answer =
                ask(() -> questions.choose("Save first?", "Two changes are not saved.", List.of("Save", "Drop them")));
        dialog();

        robot.type(KeyCode.ESCAPE);

        assertThat(answer.get(20, TimeUnit.SECONDS)).isEmpty();
    }

    @Test
    void aQuestionStandsOverTheDeskAndShowsAllOfIt() throws Exception {
        CompletableFuture<Optional<Integer>> answer = ask(() -> questions.choose(
                "Not saved",
                "The file was changed by another since it was read. Save under another name, or read it again.",
                List.of("Save under another name", "Write over the file", "Leave it")));
        Stage dialog = dialog();

        assertThat(onDesk(() -> dialog.getX() + dialog.getWidth() / 2))
                .isCloseTo(onDesk(() -> owner.getX() + owner.getWidth() / 2), within(2.0));
        assertThat(onDesk(() ->
                        dialog.getScene().getRoot().prefHeight(dialog.getScene().getWidth())))
                .isLessThanOrEqualTo(onDesk(() -> dialog.getScene().getHeight()));

        robot.type(KeyCode.ESCAPE);
        assertThat(answer.get(20, TimeUnit.SECONDS)).isEmpty();
    }

    @Test
    void oneOfManyIsPickedByKeyAndEscapePutsTheListAway() throws Exception {
        List<Questions.Choice> files = IntStream.range(0, 12)
                .mapToObj(i -> new Questions.Choice("post-" + i + ".json", "/home/mara/varn-valley/river-post/" + i))
                .toList();
        CompletableFuture<Optional<Integer>> answer =
                ask(() -> questions.pick("Recent files", "Which one is to be opened?", files));
        picture(dialog().getScene(), "question-list");

        robot.type(KeyCode.DOWN, KeyCode.DOWN, KeyCode.ENTER);

        assertThat(answer.get(20, TimeUnit.SECONDS)).contains(2);
        CompletableFuture<Optional<Integer>> second = ask(() -> questions.pick("Recent files", "Which?", files));
        dialog();
        robot.type(KeyCode.ESCAPE);
        assertThat(second.get(20, TimeUnit.SECONDS)).isEmpty();
    }

    @Test
    void aTextWithAFaultIsNotTaken() throws Exception {
        CompletableFuture<Optional<String>> answer = ask(() -> questions.text(
                "Accept",
                "It is broken.",
                "Reason",
                "",
                "Accept",
                typed -> typed.isBlank() ? Optional.of("A reason is needed.") : Optional.empty()));
        Stage dialog = dialog();

        robot.type(KeyCode.ENTER);
        picture(dialog.getScene(), "question-text");
        assertThat(answer).isNotDone();
        robot.write("Weighed").type(KeyCode.ENTER);

        assertThat(answer.get(20, TimeUnit.SECONDS)).contains("Weighed");
    }

    private static <T> CompletableFuture<T> ask(Callable<T> question) {
        CompletableFuture<T> answer = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                answer.complete(question.call());
            } catch (Exception e) {
                answer.completeExceptionally(e);
            }
        });
        return answer;
    }

    private Stage dialog() {
        await(
                "the question is open",
                () -> Window.getWindows().stream().anyMatch(window -> window != owner && window.isFocused()));
        return onDesk(() -> (Stage) Window.getWindows().stream()
                .filter(window -> window != owner)
                .findFirst()
                .orElseThrow());
    }
}
