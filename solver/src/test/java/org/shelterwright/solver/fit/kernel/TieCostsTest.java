package org.shelterwright.solver.fit.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.cable.WireEnd;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.stowage.Ways;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.HandTerm;
import org.shelterwright.solver.fit.model.Slot;
import org.shelterwright.solver.fit.model.Spot;
import org.shelterwright.solver.fit.model.TieTerm;
import org.shelterwright.solver.fit.model.WireTerm;

class TieCostsTest {
    private static final Layout POST =
            LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();

    private static FitProblem problem() {
        return FitProblem.of(Checker.standard().scene(POST.withRoutes(Map.of())));
    }

    @Test
    void sumsThatFollowMovesAreThoseOfAFreshState() {
        FitProblem problem = problem();
        State state = new State(problem);
        state.restore(problem.start());
        Random random = new Random(11);
        for (int i = 0; i < 200; i++) {
            Slot slot = problem.slot(random.nextInt(problem.size()));
            if (!slot.options().isEmpty()) {
                int option = random.nextInt(slot.options().size());
                state.put(
                        slot.index(),
                        new Spot(
                                option,
                                random.nextInt(3_000_000),
                                random.nextInt(1_500_000),
                                random.nextInt(1_000_000)));
            }
            if (i % 20 == 19) {
                State fresh = new State(problem);
                fresh.restore(state.spots());
                assertThat(state.score().soft())
                        .as("move %d", i)
                        .isEqualTo(fresh.score().soft());
            }
        }
    }

    @Test
    void aUnitThatIsTakenOutAndPutBackCostsWhatItDid() {
        FitProblem problem = problem();
        State state = new State(problem);
        state.restore(problem.start());
        int slot = problem.slotOf("power-unit", Situation.ON_STATION);
        Spot spot = state.spot(slot);
        long before = state.score().soft();

        state.remove(slot);
        long without = state.score().soft();
        state.put(slot, spot);

        assertThat(without).isLessThan(before);
        assertThat(state.score().soft()).isEqualTo(before);
    }

    @Test
    void aWireIsAsLongAsItsPortsAreApartOrTheWayByTheTrays() {
        FitProblem problem = problem();
        Scene scene = problem.scene();
        int seen = 0;
        for (TieTerm term : problem.ties()) {
            if (!(term instanceof WireTerm) || term.b() < 0) {
                continue;
            }
            String a = problem.slot(term.a()).unit().id();
            String b = problem.slot(term.b()).unit().id();
            LaidWire wire = CableNet.of(scene).wires().stream()
                    .filter(one -> one.units().contains(a) && one.units().contains(b))
                    .filter(one -> at(one.from()) != null && at(one.to()) != null)
                    .findFirst()
                    .orElseThrow();
            Point from = at(wire.from());
            Point to = at(wire.to());
            long straight = Math.abs(from.x() - to.x()) + Math.abs(from.y() - to.y()) + Math.abs(from.z() - to.z());

            long length = term.length(foot(scene, term, true, a), foot(scene, term, false, b));

            assertThat(length)
                    .as(wire.wire().id())
                    .isGreaterThanOrEqualTo(straight)
                    .isLessThan(straight + 12_000_000);
            seen++;
        }
        assertThat(seen).isGreaterThan(15);
    }

    @Test
    void whatATaskNeedsAtOnceIsAsFarAsTheLedgerSays() {
        FitProblem problem = problem();
        Scene scene = problem.scene();
        Ways ways = new Ways(scene);
        List<Double> told = new ArrayList<>();
        scene.interiors()
                .stowages()
                .forEach((unit, pieces) -> pieces.forEach(piece -> ways.task(piece.spec())
                        .filter(task -> !unit.equals(task.unit()))
                        .flatMap(ways::spot)
                        .ifPresent(spot -> told.add(Ways.mm(scene.unit(unit).orElseThrow(), piece.box(), spot)))));
        List<Double> compiled = new ArrayList<>();
        for (TieTerm term : problem.ties()) {
            if (term instanceof HandTerm) {
                String a = problem.slot(term.a()).unit().id();
                TieTerm.Foot other = term.b() < 0
                        ? term.fixed()
                        : foot(scene, term, false, problem.slot(term.b()).unit().id());
                compiled.add(term.length(foot(scene, term, true, a), other) / 1e3);
            }
        }

        assertThat(compiled).hasSizeGreaterThan(20).hasSameSizeAs(told);
        compiled.sort(null);
        told.sort(null);
        for (int i = 0; i < told.size(); i++) {
            assertThat(compiled.get(i)).isCloseTo(told.get(i), within(0.01));
        }
    }

    private static Point at(WireEnd end) {
        return end == null ? null : end.at();
    }

    private static TieTerm.Foot foot(Scene scene, TieTerm term, boolean first, String unit) {
        var pose = scene.unit(unit).orElseThrow().pose(Situation.ON_STATION);
        return term.foot(
                first, pose.yaw(), pose.at().x(), pose.at().y(), pose.at().z());
    }
}
