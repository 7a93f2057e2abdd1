package org.shelterwright.solver.route.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Scanner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Published sets are read from the folder that {@code BENCHMARK_DATA} names. */
class ShortestTreeTest {
    private static Path folder() {
        String data = System.getenv("BENCHMARK_DATA");
        assumeThat(data).as("BENCHMARK_DATA is not set").isNotNull();
        Path folder = Path.of(data, "steiner");
        assumeThat(folder).isDirectory();
        return folder;
    }

    /** Rows of a table of published optima: set, instance, n, m, t, optimum (OR-Library, Beasley 1990). */
    private static long optimum(int number) throws IOException {
        String start = String.format("B,b%02d.stp,", number);
        return Files.readAllLines(folder().resolve("optima.csv")).stream()
                .filter(line -> line.startsWith(start))
                .map(line -> Long.parseLong(line.substring(line.lastIndexOf(',') + 1)))
                .findFirst()
                .orElseThrow();
    }

    private static TreeProblem orLibrary(Path file) throws IOException {
        try (Scanner in = new Scanner(Files.readString(file))) {
            int nodes = in.nextInt();
            int count = in.nextInt();
            List<TreeProblem.Edge> edges = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                edges.add(new TreeProblem.Edge(in.nextInt() - 1, in.nextInt() - 1, in.nextLong()));
            }
            List<Integer> terminals = new ArrayList<>();
            int ends = in.nextInt();
            for (int i = 0; i < ends; i++) {
                terminals.add(in.nextInt() - 1);
            }
            return new TreeProblem(nodes, edges, terminals);
        }
    }

    private static TreeProblem challenge(Path file) throws IOException {
        List<TreeProblem.Edge> edges = new ArrayList<>();
        List<Integer> terminals = new ArrayList<>();
        int nodes = 0;
        for (String line : Files.readAllLines(file)) {
            String[] words = line.trim().split("\\s+");
            if (words[0].equals("Nodes")) {
                nodes = Integer.parseInt(words[1]);
            } else if (words[0].equals("E")) {
                edges.add(new TreeProblem.Edge(
                        Integer.parseInt(words[1]) - 1, Integer.parseInt(words[2]) - 1, Long.parseLong(words[3])));
            } else if (words[0].equals("T")) {
                terminals.add(Integer.parseInt(words[1]) - 1);
            }
        }
        return new TreeProblem(nodes, edges, terminals);
    }

    private static void assertIsATree(TreeProblem problem, Tree tree) {
        int[] top = new int[problem.nodes()];
        Arrays.setAll(top, i -> i);
        for (int edge : tree.edges()) {
            int a = find(top, problem.edges().get(edge).a());
            int b = find(top, problem.edges().get(edge).b());
            assertThat(a).as("edge %d closes no ring", edge).isNotEqualTo(b);
            top[a] = b;
        }
        assertThat(problem.terminals().stream().map(t -> find(top, t)).distinct())
                .hasSize(1);
        assertThat(tree.edges().stream()
                        .mapToLong(e -> problem.edges().get(e).length())
                        .sum())
                .isEqualTo(tree.length());
    }

    private static int find(int[] top, int node) {
        return top[node] == node ? node : find(top, top[node]);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18})
    void reachesThePublishedOptimumOfSteinerB(int number) throws IOException {
        long optimum = optimum(number);
        TreeProblem problem = orLibrary(folder().resolve("steinb" + number + ".txt"));

        Tree tree = ShortestTree.find(problem, 2_000).orElseThrow();

        assertIsATree(problem, tree);
        assertThat(tree.length()).isEqualTo(optimum);
        assertThat(tree.bound()).as("proven").isEqualTo(optimum);
    }

    /** Optima as the challenge published them (PACE 2018). */
    @ParameterizedTest
    @CsvSource({"001,503", "006,557", "009,926", "027,188", "069,3271", "070,32"})
    void reachesThePublishedOptimumOfTheChallengeOrTellsTheGap(String name, long optimum) throws IOException {
        TreeProblem problem = challenge(folder().resolve("pace2018").resolve("instance" + name + ".gr"));

        Tree tree = ShortestTree.find(problem, 400).orElseThrow();

        assertIsATree(problem, tree);
        assertThat(tree.length()).isGreaterThanOrEqualTo(optimum);
        assertThat(tree.bound()).isLessThanOrEqualTo(optimum);
        assertThat(tree.length()).as("within 3 %% of the optimum").isLessThanOrEqualTo(optimum * 103 / 100);
    }

    @Test
    void agreesWithTryingAllSetsOfNodesOnSmallGraphs() {
        for (long seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            int nodes = 4 + random.nextInt(6);
            List<TreeProblem.Edge> edges = new ArrayList<>();
            for (int i = 0; i < nodes; i++) {
                for (int j = 0; j < i; j++) {
                    if (random.nextInt(100) < 45) {
                        edges.add(new TreeProblem.Edge(i, j, 1 + random.nextInt(20)));
                    }
                }
            }
            List<Integer> terminals = new ArrayList<>();
            for (int i = 0; i < nodes; i++) {
                if (random.nextInt(100) < 45) {
                    terminals.add(i);
                }
            }
            TreeProblem problem = new TreeProblem(nodes, edges, terminals);

            Optional<Tree> tree = ShortestTree.find(problem, 10_000);
            long least = byTrying(problem);

            assertThat(tree.map(Tree::length).orElse(-1L)).as("seed %d", seed).isEqualTo(least);
            tree.ifPresent(found -> assertThat(found.optimal()).isTrue());
        }
    }

    /** Least spanning tree of every set of nodes that holds the terminals; -1 if none hangs together. */
    private static long byTrying(TreeProblem problem) {
        if (problem.terminals().size() < 2) {
            return 0;
        }
        long best = -1;
        for (int set = 0; set < 1 << problem.nodes(); set++) {
            int chosen = set;
            if (problem.terminals().stream().allMatch(t -> (chosen >> t & 1) == 1)) {
                long length = spanning(problem, set);
                best = length >= 0 && (best < 0 || length < best) ? length : best;
            }
        }
        return best;
    }

    private static long spanning(TreeProblem problem, int set) {
        int[] top = new int[problem.nodes()];
        Arrays.setAll(top, i -> i);
        long sum = 0;
        int joined = 1;
        List<TreeProblem.Edge> order = problem.edges().stream()
                .filter(e -> (set >> e.a() & 1) == 1 && (set >> e.b() & 1) == 1)
                .sorted((p, q) -> Long.compare(p.length(), q.length()))
                .toList();
        for (TreeProblem.Edge edge : order) {
            int a = find(top, edge.a());
            int b = find(top, edge.b());
            if (a != b) {
                top[a] = b;
                sum += edge.length();
                joined++;
            }
        }
        return joined == Integer.bitCount(set) ? sum : -1;
    }

    @Test
    void aGraphThatDoesNotJoinItsTerminalsHasNoTree() {
        TreeProblem parted = new TreeProblem(4, List.of(new TreeProblem.Edge(0, 1, 3)), List.of(0, 3));

        assertThat(ShortestTree.find(parted, 100)).isEmpty();
    }
}
