package org.shelterwright.app.desk.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeyMapTest {
    private final Commands commands = new Commands();
    private final Command turn = Command.of("edit.turn", "Turn", List.of("Ctrl+T"), () -> {});
    private final Command save = Command.of("file.save", "Save", List.of("Ctrl+S", "F12"), () -> {});

    @BeforeEach
    void add() {
        commands.addAll(List.of(turn, save));
    }

    @Test
    void whatCanBeDoneIsListedFirst() {
        Command off = new Command("edit.off", "Off", List.of(), List.of(), () -> Optional.of("No."), () -> {});
        Command last = Command.of("edit.last", "Last", List.of(), () -> {});
        commands.addAll(List.of(off, last));

        assertThat(commands.ableFirst()).containsExactly(turn, save, last, off);
    }

    @Test
    void theCommandInPlaceOfAnotherIsFoundByItsId() {
        commands.putInstead(Map.of("edit.turn", "file.save"));

        assertThat(commands.inPlaceOf("edit.turn")).contains(save);
        assertThat(commands.inPlaceOf("file.save")).contains(save);
        assertThat(commands.inPlaceOf("nothing")).isEmpty();
    }

    @Test
    void commandsHaveTheirFirstKeys() {
        KeyMap keys = new KeyMap(commands, Map.of());

        assertThat(keys.keys(save)).containsExactly("Ctrl+S", "F12");
        assertThat(keys.command("Ctrl+T")).contains(turn);
        assertThat(keys.command("Ctrl+J")).isEmpty();
    }

    @Test
    void chosenKeysAreTakenFromWhatHadThem() {
        KeyMap keys = new KeyMap(commands, Map.of());

        keys.choose(turn, "ctrl + s");

        assertThat(keys.command("Ctrl+S")).contains(turn);
        assertThat(keys.keys(turn)).containsExactly("Ctrl+S");
        assertThat(keys.keys(save)).containsExactly("F12");
        assertThat(keys.own()).containsOnlyKeys("edit.turn", "file.save");
    }

    @Test
    void firstKeysComeBack() {
        KeyMap keys = new KeyMap(commands, Map.of("edit.turn", List.of("Alt+T")));
        assertThat(keys.keys(turn)).containsExactly("Alt+T");

        keys.reset(turn);

        assertThat(keys.keys(turn)).containsExactly("Ctrl+T");
    }

    @Test
    void keptKeysOfUnknownCommandsDoNoHarm() {
        KeyMap keys = new KeyMap(commands, Map.of("gone", List.of("Ctrl+T")));

        assertThat(keys.command("Ctrl+T")).contains(turn);
    }

    @ParameterizedTest
    @CsvSource({"shift+ctrl+z, Ctrl+Shift+Z", "Del, Delete", "Escape, Esc", "Alt + Ctrl + f8, Ctrl+Alt+f8", "r, R"})
    void keysAreWrittenInOneWay(String written, String plain) {
        assertThat(KeyMap.plain(written)).isEqualTo(plain);
    }

    @ParameterizedTest
    @CsvSource({
        "Ctrl+A, true",
        "Alt+Left, true",
        "F8, true",
        "Shift+F8, true",
        "Esc, true",
        "Delete, true",
        "R, false",
        "Left, false",
        "Shift+Left, false",
        "Enter, false"
    })
    void lettersAndArrowsWorkInTheViewOnly(String keys, boolean everywhere) {
        assertThat(KeyMap.worksEverywhere(keys)).isEqualTo(everywhere);
    }
}
