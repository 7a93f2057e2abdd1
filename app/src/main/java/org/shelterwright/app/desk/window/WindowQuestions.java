package org.shelterwright.app.desk.window;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Modality;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.ask.Questions;
import org.shelterwright.app.desk.style.StyleSheet;
import org.shelterwright.app.desk.style.Theme;

/** Asks in small windows over the desk. */
final class WindowQuestions implements Questions {
    private static final double WIDTH = 420;

    /** The most that systems draw beside, and above and below a window, about (px). */
    private static final double SIDES = 16;

    private static final double ENDS = 44;

    private final Window owner;
    private final Theme theme;
    private File last = new File("").getAbsoluteFile();

    WindowQuestions(Window owner, Theme theme) {
        this.owner = owner;
        this.theme = theme;
    }

    @Override
    public Optional<Integer> choose(String title, String sentence, List<String> answers) {
        Stage stage = stage(title);
        int[] chosen = {-1};
        HBox buttons = new HBox(8);
        buttons.setAlignment(Pos.CENTER_RIGHT);
        for (int i = answers.size() - 1; i >= 0; i--) {
            int index = i;
            Button button = new Button(answers.get(i));
            button.setDefaultButton(i == 0);
            button.setMinWidth(Button.USE_PREF_SIZE);
            button.setOnAction(event -> {
                chosen[0] = index;
                stage.close();
            });
            buttons.getChildren().add(button);
            if (i == 0) {
                stage.setOnShown(event -> button.requestFocus());
            }
        }
        show(stage, title, sentence, buttons);
        return chosen[0] < 0 ? Optional.empty() : Optional.of(chosen[0]);
    }

    @Override
    public Optional<Integer> pick(String title, String sentence, List<Choice> choices) {
        Stage stage = stage(title);
        ChoiceList list = new ChoiceList(choices, theme);
        boolean[] chosen = {false};
        Runnable choose = () -> {
            chosen[0] = list.chosen() >= 0;
            stage.close();
        };
        list.onChosen(choose, stage::close);
        Button open = new Button("Choose");
        open.setDefaultButton(true);
        open.setOnAction(event -> choose.run());
        HBox buttons = new HBox(8, cancel(stage), open);
        buttons.setAlignment(Pos.CENTER_RIGHT);
        stage.setOnShown(event -> list.node().requestFocus());
        show(stage, title, sentence, list.node(), buttons);
        return chosen[0] ? Optional.of(list.chosen()) : Optional.empty();
    }

    @Override
    public Optional<String> text(
            String title,
            String sentence,
            String label,
            String before,
            String order,
            Function<String, Optional<String>> fault) {
        Stage stage = stage(title);
        TextField field = new TextField(before);
        Label name = new Label(label);
        name.setLabelFor(field);
        Label wrong = new Label();
        wrong.getStyleClass().addAll("second", "broken");
        wrong.setWrapText(true);
        Button accept = new Button(order);
        accept.setDefaultButton(true);
        boolean[] accepted = {false};
        accept.setOnAction(event -> {
            Optional<String> found = fault.apply(field.getText());
            wrong.setText(found.orElse(""));
            field.getStyleClass().remove("wrong");
            if (found.isPresent()) {
                field.getStyleClass().add("wrong");
                field.requestFocus();
            } else {
                accepted[0] = true;
                stage.close();
            }
        });
        HBox buttons = new HBox(8, cancel(stage), accept);
        buttons.setAlignment(Pos.CENTER_RIGHT);
        stage.setOnShown(event -> field.requestFocus());
        show(stage, title, sentence, new VBox(4, name, field, wrong), buttons);
        return accepted[0] ? Optional.of(field.getText().strip()) : Optional.empty();
    }

    @Override
    public Optional<Path> fileToOpen(String title) {
        return asked(files(title).showOpenDialog(owner));
    }

    @Override
    public Optional<Path> fileToSave(String title, Path suggested) {
        FileChooser chooser = files(title);
        chooser.setInitialFileName(String.valueOf(suggested.getFileName()));
        Path folder = suggested.getParent();
        if (folder != null && Files.isDirectory(folder)) {
            chooser.setInitialDirectory(folder.toFile());
        }
        return asked(chooser.showSaveDialog(owner));
    }

    @Override
    public Optional<Path> folder(String title) {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(title);
        chooser.setInitialDirectory(last.isDirectory() ? last : null);
        return asked(chooser.showDialog(owner));
    }

    /** The next question begins in the folder of the last. */
    private Optional<Path> asked(@Nullable File chosen) {
        if (chosen != null) {
            File folder = chosen.isDirectory() ? chosen : chosen.getParentFile();
            last = folder == null ? last : folder;
        }
        return Optional.ofNullable(chosen).map(File::toPath);
    }

    @Override
    public void tell(String title, String sentence) {
        choose(title, sentence, List.of("Go on"));
    }

    private FileChooser files(String title) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.setInitialDirectory(last.isDirectory() ? last : null);
        chooser.getExtensionFilters()
                .addAll(
                        new FileChooser.ExtensionFilter("Layouts, briefs and journeys", "*.json"),
                        new FileChooser.ExtensionFilter("All files", "*"));
        return chooser;
    }

    private static Button cancel(Stage stage) {
        Button cancel = new Button("Leave it");
        cancel.setCancelButton(true);
        cancel.setOnAction(event -> stage.close());
        return cancel;
    }

    private Stage stage(String title) {
        Stage stage = new Stage();
        stage.initOwner(owner);
        stage.initModality(Modality.WINDOW_MODAL);
        stage.setTitle(title);
        stage.setResizable(false);
        return stage;
    }

    private void show(Stage stage, String title, String sentence, Node... parts) {
        Label head = new Label(title);
        head.getStyleClass().add("title");
        Label words = new Label(sentence);
        words.setWrapText(true);
        VBox box = new VBox(12, head, words);
        box.getChildren().addAll(parts);
        box.getStyleClass().add("question");
        Scene scene = new Scene(box);
        scene.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                stage.close();
            }
        });
        StyleSheet.dressOnce(scene, theme);
        stage.setScene(scene);
        place(stage, box);
        stage.showAndWait();
    }

    /**
     * Over the middle of the desk, rather than where the system puts windows. Its size is set too: some systems show a window whose size
     * follows from what is in it empty at first.
     */
    private void place(Stage stage, VBox box) {
        double width = Math.min(theme.sized(WIDTH), owner.getWidth() - SIDES);
        box.applyCss();
        box.layout();
        stage.setWidth(width + SIDES);
        stage.setHeight(Math.min(box.prefHeight(width) + ENDS, owner.getHeight()));
        stage.setX(owner.getX() + Math.max(0, (owner.getWidth() - stage.getWidth()) / 2));
        stage.setY(owner.getY() + Math.max(0, (owner.getHeight() - stage.getHeight()) / 3));
    }
}
