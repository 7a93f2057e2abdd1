package org.shelterwright.solver.load.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.Upright;
import org.shelterwright.solver.load.set.LoadSet.SetProblem;

class LoadSetTest {
    private static final String TEXT = """
             2
             1 2502505
             587 233 220
             2
             1 108 0 76 0 30 1 40
             2 110 0 43 1 25 1 33
             7
             60 40 30

             1
             3 20 1 20 1 20 1 5
            """;
    private static final String[] PIECES = {"-1", " ", "\n", "0", "1e9", "99999999999", "x", "\u0000", "é", "1 1", ","};

    private static LoadSet read(String text) {
        return LoadSet.read(new InputFile("set.txt", text.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void readsProblemsWithAndWithoutASeed() {
        LoadSet set = read(TEXT);

        assertThat(set.problems()).extracting(SetProblem::number).containsExactly(1, 7);
        SetProblem first = set.problem(1, "set.txt");
        assertThat(first.room()).isEqualTo(new Size(587, 233, 220));
        assertThat(first.pieces()).isEqualTo(73);
        assertThat(first.kinds().get(1))
                .isEqualTo(CargoKind.of("2", new Size(110, 43, 25), new Upright(false, true, true), 33));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "587 233 220|587 233|set.txt, line 3: Here the length, width and height of the room should stand (3 figures),"
                        + " but there are 2.",
                "587 233|587 -233|set.txt, line 3: Here the length, width and height of the room should stand,"
                        + " but \"-233\" is no whole number.",
                "1 108 0|1 0 0|set.txt, line 5: Here a length should stand, but 0 is not from 1 to 10000000.",
                "1 108 0 76 0 30 1 40|1 108 0 76 0 30 1|set.txt, line 5: Here a kind should stand (number, length, flag,"
                        + " width, flag, height, flag, count: 8 figures), but there are 7.",
                "30 1 40|30 0 40|set.txt, line 5: Kind 1 may stand on no side: all its flags are 0. Set at least one to 1.",
                "30 1 40|30 2 40|set.txt, line 5: Here a flag should stand, but 2 is not from 0 to 1.",
                "1 2502505|1 2 3|set.txt, line 2: Here the number of a problem should stand, perhaps with a seed behind it,"
                        + " but there are 3 figures.",
                "3 20 1 20 1 20 1 5|''|set.txt: The file ends where a kind should stand. Maybe a part of it is missing.",
                "3 20 1 20 1 20 1 5|3 20 1 20 1 20 1 5 ; 9|set.txt, line 11: Here a kind should stand (number, length, flag,"
                        + " width, flag, height, flag, count: 8 figures), but there are 10.",
                "1 25 1 33|1 25 1 20000|set.txt, line 6: Problem 1 has more than 20000 pieces, which is the most that can be"
                        + " loaded. Take some out."
            })
    void saysWhatIsWrongAndWhere(String what, String with, String sentence) {
        assertThatThrownBy(() -> read(TEXT.replace(what, with)))
                .isInstanceOf(InputException.class)
                .hasMessage(sentence);
    }

    @Test
    void refusesWhatFollowsTheLastProblem() {
        assertThatThrownBy(() -> read(TEXT + "8\n"))
                .hasMessage(
                        "set.txt, line 12: The file should end here, after the 2 problems that its first line tells.");
    }

    @Test
    void refusesAProblemThatThereIsNot() {
        assertThatThrownBy(() -> read(TEXT).problem(2, "set.txt"))
                .hasMessage("set.txt: There is no problem 2 in this set; it has 2 problems, from 1 to 7.");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void survivesChangedText(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int turn = 0; turn < 1_000; turn++) {
            StringBuilder text = new StringBuilder(TEXT);
            for (int n = random.nextInt(1, 6); n > 0; n--) {
                int at = random.nextInt(text.length());
                switch (random.nextInt(3)) {
                    case 0 -> text.delete(at, Math.min(text.length(), at + random.nextInt(1, 8)));
                    case 1 -> text.insert(at, PIECES[random.nextInt(PIECES.length)]);
                    default -> text.insert(random.nextInt(text.length()), text.substring(at));
                }
                if (text.isEmpty()) {
                    text.append(' ');
                }
            }
            try {
                assertThat(read(text.toString()).problems())
                        .as("seed %d, turn %d", seed, turn)
                        .isNotEmpty();
            } catch (InputException e) {
                assertThat(e.getMessage())
                        .as("seed %d, turn %d", seed, turn)
                        .startsWith("set.txt")
                        .endsWith(".");
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {5, 6})
    void survivesAnyBytes(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int turn = 0; turn < 1_000; turn++) {
            byte[] bytes = new byte[random.nextInt(200)];
            random.nextBytes(bytes);
            int number = turn;
            assertThatThrownBy(() -> LoadSet.read(new InputFile("set.txt", bytes)))
                    .as("seed %d, turn %d", seed, number)
                    .isInstanceOf(InputException.class);
        }
    }
}
