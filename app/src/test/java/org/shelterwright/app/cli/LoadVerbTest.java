package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.solver.load.audit.LoadAudit;
import org.shelterwright.solver.load.model.Load;
import org.shelterwright.solver.load.model.Stowed;
import org.shelterwright.solver.load.model.Support;
import org.shelterwright.solver.load.set.LoadSet;
import org.shelterwright.solver.load.set.LoadSet.SetProblem;
import tools.jackson.databind.JsonNode;

class LoadVerbTest {
    private static final String SET = """
            2
            3 17
            587 233 220
            3
            1 108 0 76 0 30 1 40
            2 110 0 43 1 25 1 33
            3 92 1 81 1 55 1 39
            4
            50 50 50
            1
            1 20 0 20 0 20 1 9
            """;

    @TempDir
    Path folder;

    private Path set;

    @BeforeEach
    void writeSet() throws IOException {
        set = Files.writeString(folder.resolve("set.txt"), SET);
    }

    @Test
    void writesARowForEachPieceThatHolds() throws IOException {
        Path out = folder.resolve("load.csv");

        Ran ran = Ran.of("load", "--set", set, "--problem", 3, "--moves", 20_000, "--out", out);

        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.err()).isEmpty();
        List<String> lines = Files.readAllLines(out);
        assertThat(lines.get(0)).isEqualTo("problem,type,x,y,z,dx,dy,dz");
        assertThat(ran.outLines().get(0))
                .startsWith("Problem 3: " + (lines.size() - 1) + " of 112 pieces, ")
                .endsWith("Checked from scratch: every piece holds.");
        assertThat(ran.outLines().get(1)).isEqualTo("1 file written: " + out);
        SetProblem problem = LoadSet.read(InputFile.read(set)).problem(3, "set");
        Load load = new Load(lines.stream().skip(1).map(LoadVerbTest::stowed).toList());
        assertThat(LoadAudit.of(problem.with(Support.FULL), load)).isEmpty();
        assertThat(load.volume()).isGreaterThan(0.8 * 587 * 233 * 220);
    }

    private static Stowed stowed(String row) {
        int[] f = java.util.Arrays.stream(row.split(","))
                .mapToInt(Integer::parseInt)
                .toArray();
        return new Stowed(f[1] - 1, new Box(f[2], f[3], f[4], f[2] + f[5], f[3] + f[6], f[4] + f[7]));
    }

    @Test
    void printsTheRowsIfNoFileIsNamed() {
        Ran ran = Ran.of("load", "--set", set, "--problem", 4, "--moves", 500);

        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.outLines()).hasSize(9);
        assertThat(ran.outLines().get(1)).startsWith("4,1,").endsWith(",20,20,20");
    }

    @Test
    void sameSeedAndMovesGiveTheSameBytes() {
        Ran one = Ran.of("load", "--set", set, "--problem", 3, "--moves", 20_000, "--seed", 5, "--json");
        Ran two = Ran.of("load", "--set", set, "--problem", 3, "--moves", 20_000, "--seed", 5, "--json");

        assertThat(one.status()).as(one.err()).isZero();
        assertThat(two.out()).isEqualTo(one.out());
        JsonNode json = one.json();
        assertThat(json.get("format").asString()).isEqualTo("shelterwright-result-load");
        assertThat(json.get("rows").size()).isEqualTo(json.get("loaded").asInt());
        assertThat(json.get("share").asDouble()).isBetween(0.8, 1.0);
    }

    @Test
    void withoutSupportPiecesMayHang() {
        Ran ran = Ran.of("load", "--set", set, "--problem", 3, "--moves", 20_000, "--support", "none", "--json");

        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.json().get("support").asString()).isEqualTo("none");
    }

    @Test
    void endsAtItsTime() {
        Ran ran = Ran.of("load", "--set", set, "--problem", 3, "--seconds", 0.3, "--json");

        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.json().get("budget").get("timeS").asDouble()).isEqualTo(0.3);
    }

    @Test
    void badInputIsRefusedInOneSentence() {
        assertRefused("load: Nothing to load is named. Name a journey, or a set of problems with --set.");
        assertRefused(
                set + ": There is no problem 9 in this set; it has 2 problems, from 3 to 4.",
                "--set",
                set,
                "--problem",
                9);
        assertRefused(
                folder.resolve("no.txt") + ": There is no such file. Check its name and folder.",
                "--set",
                folder.resolve("no.txt"),
                "--problem",
                3);
        assertRefused(
                "--seconds: This is -1.0, but must be from 0.001 to 86400.",
                "--set",
                set,
                "--problem",
                3,
                "--seconds",
                -1);
        assertRefused(
                "--moves: This is 0, but must be from 1 to 1000000000000.", "--set", set, "--problem", 3, "--moves", 0);
        assertRefused(
                "Invalid value for option '--support': \"half\" is none of full, none. See: shelterwright load --help",
                "--set",
                set,
                "--problem",
                3,
                "--support",
                "half");
        assertRefused(
                folder + ": This is a folder, but a file is needed. Name a file in it.",
                "--set",
                set,
                "--problem",
                3,
                "--out",
                folder);
        assertRefused(
                folder.resolve("none/load.csv") + ": There is no folder " + folder.resolve("none")
                        + ". Make it, or name another.",
                "--set",
                set,
                "--problem",
                3,
                "--out",
                folder.resolve("none/load.csv"));
    }

    private static void assertRefused(String sentence, Object... options) {
        Object[] arguments = new Object[options.length + 1];
        arguments[0] = "load";
        System.arraycopy(options, 0, arguments, 1, options.length);
        Ran ran = Ran.of(arguments);

        assertThat(ran.status()).as(ran.err()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).startsWith(sentence);
        assertThat(ran.err().lines()).hasSize(1);
    }
}
