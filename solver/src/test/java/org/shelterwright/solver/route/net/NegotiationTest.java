package org.shelterwright.solver.route.net;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Ways found by negotiation beside those of an exact general solver (CP-SAT) on small random networks with scarce room. */
class NegotiationTest {
    private static final int CASES = 50;

    private record Case(Network network, List<Strand> strands) {}

    /** A grid of trays with two classes, ports hanging on it, and links that hold only a few strands. */
    private static Case random(long seed) {
        Random random = new Random(seed);
        int wide = 3 + random.nextInt(3);
        int deep = 2 + random.nextInt(2);
        List<Link> links = new ArrayList<>();
        for (int x = 0; x < wide; x++) {
            for (int y = 0; y < deep; y++) {
                int node = x * deep + y;
                if (x + 1 < wide) {
                    links.add(tray(node, node + deep, random));
                }
                if (y + 1 < deep) {
                    links.add(tray(node, node + 1, random));
                }
            }
        }
        int next = wide * deep;
        List<Strand> strands = new ArrayList<>();
        List<Integer> ends = new ArrayList<>();
        int count = 4 + random.nextInt(6);
        for (int s = 0; s < count; s++) {
            int bit = 1 << random.nextInt(2);
            for (int end = 0; end < 2; end++) {
                for (int k = 0; k < 2; k++) {
                    int to = random.nextInt(wide * deep);
                    links.add(new Link(next + end, to, 50 + random.nextInt(300), Link.FREE, false, 3, s));
                }
            }
            strands.add(new Strand(next, next + 1, 10 + random.nextInt(40), bit, s));
            ends.add(next);
            ends.add(next + 1);
            next += 2;
        }
        return new Case(new Network(next, links, ends), strands);
    }

    private static Link tray(int a, int b, Random random) {
        int classes = random.nextInt(100) < 70 ? 3 : 1 + random.nextInt(2);
        return new Link(a, b, 100 + random.nextInt(400), 40 + random.nextInt(60), false, classes, Link.ANY);
    }

    /** The least cost; -1 if there are no ways for all. */
    private static long exactly(Case one) {
        CpModel model = new CpModel();
        List<Link> links = one.network().links();
        LinearExprBuilder cost = LinearExpr.newBuilder();
        LinearExprBuilder[] load = new LinearExprBuilder[links.size()];
        for (int i = 0; i < load.length; i++) {
            load[i] = LinearExpr.newBuilder();
        }
        for (Strand strand : one.strands()) {
            LinearExprBuilder[] balance = new LinearExprBuilder[one.network().size()];
            for (int n = 0; n < balance.length; n++) {
                balance[n] = LinearExpr.newBuilder();
            }
            for (int i = 0; i < links.size(); i++) {
                Link link = links.get(i);
                if (link.admits(strand)) {
                    BoolVar forth = model.newBoolVar("f");
                    BoolVar back = model.newBoolVar("b");
                    model.addAtMostOne(new BoolVar[] {forth, back});
                    balance[link.a()].addTerm(forth, 1).addTerm(back, -1);
                    balance[link.b()].addTerm(forth, -1).addTerm(back, 1);
                    cost.addTerm(forth, link.cost()).addTerm(back, link.cost());
                    load[i].addTerm(forth, link.takenBy(strand)).addTerm(back, link.takenBy(strand));
                }
            }
            for (int n = 0; n < balance.length; n++) {
                model.addEquality(balance[n], n == strand.from() ? 1 : n == strand.to() ? -1 : 0);
            }
        }
        for (int i = 0; i < load.length; i++) {
            if (links.get(i).capacity() < Link.FREE) {
                model.addLessOrEqual(load[i], links.get(i).capacity());
            }
        }
        model.minimize(cost);
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setMaxTimeInSeconds(30).setRandomSeed(1);
        CpSolverStatus status = solver.solve(model);
        assertThat(status).isIn(CpSolverStatus.OPTIMAL, CpSolverStatus.INFEASIBLE);
        return status == CpSolverStatus.OPTIMAL ? Math.round(solver.objectiveValue()) : -1;
    }

    @Test
    void isWithinTwoPercentOfAnExactSolverAndFindsRoomWhereThatDoes() {
        Loader.loadNativeLibraries();
        int feasible = 0;
        int scarce = 0;
        double sum = 0;
        double exactSum = 0;
        for (long seed = 1; feasible < CASES; seed++) {
            Case one = random(seed);
            long least = exactly(one);
            Ways ways = Negotiation.solve(one.network(), one.strands());
            if (least < 0) {
                boolean all = ways.ways().stream().allMatch(way -> way != null);
                assertThat(all && ways.within()).as("seed %d", seed).isFalse();
                continue;
            }
            feasible++;
            scarce += ways.rounds() > 0 ? 1 : 0;
            assertThat(ways.within()).as("seed %d", seed).isTrue();
            assertThat(ways.ways()).as("seed %d", seed).doesNotContainNull();
            assertThat(ways.bound()).as("bound of seed %d", seed).isLessThanOrEqualTo(least);
            assertThat(ways.cost())
                    .as("seed %d: least %d", seed, least)
                    .isGreaterThanOrEqualTo(least)
                    .isLessThanOrEqualTo(least * 102 / 100);
            sum += ways.cost();
            exactSum += least;
        }
        assertThat(scarce).as("cases in which room is scarce").isGreaterThan(15);
        assertThat(sum / exactSum).isLessThan(1.005);
    }

    @Test
    void aStrandThatNothingAdmitsHasNoWay() {
        Network network = new Network(2, List.of(new Link(0, 1, 5, 10, false, 1, Link.ANY)), List.of());

        Ways ways = Negotiation.solve(network, List.of(new Strand(0, 1, 1, 2, 0), new Strand(0, 1, 1, 1, 1)));

        assertThat(ways.ways().get(0)).isNull();
        assertThat(ways.ways().get(1)).containsExactly(0);
        assertThat(ways.cost()).isEqualTo(5);
    }

    @Test
    void panelsCountStrandsAndNotTheirSize() {
        Network network = new Network(
                3,
                List.of(
                        new Link(0, 1, 10, 1, true, 1, Link.ANY),
                        new Link(0, 1, 30, 1, true, 1, Link.ANY),
                        new Link(1, 2, 0, Link.FREE, false, 1, Link.ANY)),
                List.of());

        Ways ways = Negotiation.solve(network, List.of(new Strand(0, 2, 99, 1, 0), new Strand(0, 2, 99, 1, 1)));

        assertThat(ways.within()).isTrue();
        assertThat(ways.cost()).isEqualTo(40);
        assertThat(ways.gap()).isLessThan(0.51);
    }
}
