package org.shelterwright.solver.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedAcyclicGraph;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.solver.order.Shift.Kind;

/**
 * Makes a schedule, with one way to spread the bench work: each piece of work begins when the last of what it waits for has ended. The
 * waiting is kept as a graph without circles; work on a longest path through it is critical. For one schedule, not for several.
 */
final class Scheduling {
    /** Room in which a fitter works beside a unit (µm): two people do not pass each other there. Common practice. */
    private static final int WORK_ROOM = 700 * Lengths.MM;

    /** Times that differ by less are the same (min). */
    private static final double EXACT = 1e-9;

    private final BoltDownPlan plan;
    private final Bench way;
    private final Map<Integer, Work> benches = new HashMap<>();
    private final int fitters;
    private final double[] free;
    private final List<Work> done = new ArrayList<>();
    private final DirectedAcyclicGraph<Work, DefaultEdge> waits = new DirectedAcyclicGraph<>(DefaultEdge.class);

    /** When racks are filled on the bench. */
    enum Bench {
        /** When their turn comes, in gaps before. */
        IN_TURN,
        /** Those of later steps too while one is waited for. */
        TOGETHER,
        /** All before the first step. */
        FIRST
    }

    private static final class Work {
        private final BoltDownStep step;
        private final Kind kind;
        private List<Integer> fitters = List.of();
        private double from;
        private double to;

        Work(BoltDownStep step, Kind kind) {
            this.step = step;
            this.kind = kind;
        }

        double minutes() {
            return switch (kind) {
                case BENCH -> step.minutesBench();
                case BRINGING_IN -> step.minutesIn();
                case AT_PLACE -> step.minutesAt();
            };
        }
    }

    Scheduling(BoltDownPlan plan, Bench way) {
        this.plan = plan;
        this.way = way;
        this.fitters = plan.order().fitters();
        this.free = new double[fitters];
    }

    Schedule schedule() {
        double broughtIn = 0;
        if (way == Bench.FIRST) {
            plan.steps().forEach(this::filled);
        }
        for (BoltDownStep step : plan.steps()) {
            Work in = new Work(step, Kind.BRINGING_IN);
            in.from = Math.max(Math.max(broughtIn, filled(step)), earliest(in));
            in.fitters = freest(Math.min(fitters, step.people()));
            for (int fitter : in.fitters) {
                in.from = Math.max(in.from, free[fitter]);
            }
            place(in);
            broughtIn = in.to;
            Work at = new Work(step, Kind.AT_PLACE);
            at.from = Math.max(in.to, earliest(at));
            at.fitters = List.of(in.fitters.get(0));
            place(at);
        }
        Set<Work> critical = critical();
        double end = done.stream().mapToDouble(one -> one.to).max().orElse(0);
        List<Shift> shifts = done.stream()
                .map(one ->
                        new Shift(one.step.number(), one.kind, one.fitters, one.from, one.to, critical.contains(one)))
                .toList();
        return new Schedule(shifts, end, fitters);
    }

    /** Fills a rack on the bench in the first gap of a fitter that is long enough; gives when that is done. */
    private double filled(BoltDownStep step) {
        if (step.minutesBench() <= 0) {
            return 0;
        }
        Work known = benches.get(step.number());
        if (known != null) {
            return known.to;
        }
        Work bench = bench(step);
        benches.put(step.number(), bench);
        place(bench);
        if (way == Bench.TOGETHER) {
            for (BoltDownStep later :
                    plan.steps().subList(step.number(), plan.steps().size())) {
                if (later.minutesBench() > 0 && !benches.containsKey(later.number()) && bench(later).from < bench.to) {
                    filled(later);
                }
            }
        }
        return bench.to;
    }

    /** Work on the bench in the first gap of a fitter. */
    private Work bench(BoltDownStep step) {
        Work bench = new Work(step, Kind.BENCH);
        bench.from = Double.POSITIVE_INFINITY;
        for (int fitter = 0; fitter < fitters; fitter++) {
            double from = gap(fitter, bench.minutes());
            if (from < bench.from) {
                bench.from = from;
                bench.fitters = List.of(fitter);
            }
        }
        return bench;
    }

    /** From when on a fitter has so many minutes. */
    private double gap(int fitter, double minutes) {
        List<Work> own = new ArrayList<>(
                done.stream().filter(one -> one.fitters.contains(fitter)).toList());
        own.sort(Comparator.comparingDouble((Work one) -> one.from));
        double from = 0;
        for (Work one : own) {
            if (one.from >= from + minutes - EXACT) {
                return from;
            }
            from = Math.max(from, one.to);
        }
        return from;
    }

    /** When nothing that is done already hinders a piece of work any more. */
    private double earliest(Work work) {
        double earliest = 0;
        String host = work.step.unit().place(Situation.ON_STATION).host();
        for (Work other : done) {
            boolean carries = host != null && other.step.unit().id().equals(host);
            if (carries || hinders(other, work)) {
                earliest = Math.max(earliest, other.to);
            }
        }
        return earliest;
    }

    private boolean hinders(Work other, Work work) {
        if (other.kind == Kind.BENCH || work.kind == Kind.BENCH) {
            return false;
        }
        if (other.kind == Kind.BRINGING_IN) {
            return work.kind == Kind.BRINGING_IN;
        }
        Box room = room(other.step);
        return work.kind == Kind.BRINGING_IN
                ? work.step.passage().swept().stream().flatMap(List::stream).anyMatch(room::overlaps)
                : room.overlaps(room(work.step));
    }

    private static Box room(BoltDownStep step) {
        return step.unit().outline(Situation.ON_STATION).grown(WORK_ROOM / 2, WORK_ROOM / 2, 0);
    }

    private List<Integer> freest(int count) {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < fitters; i++) {
            all.add(i);
        }
        all.sort((a, b) -> free[a] != free[b] ? Double.compare(free[a], free[b]) : Integer.compare(a, b));
        return all.subList(0, count);
    }

    private void place(Work work) {
        work.to = work.from + work.minutes();
        waits.addVertex(work);
        for (Work other : done) {
            if (Math.abs(other.to - work.from) < EXACT) {
                waits.addEdge(other, work);
            }
        }
        for (int fitter : work.fitters) {
            free[fitter] = Math.max(free[fitter], work.to);
        }
        done.add(work);
    }

    /** Work that ends with the last one, and all on a chain without pause that leads to it. */
    private Set<Work> critical() {
        double end = done.stream().mapToDouble(one -> one.to).max().orElse(0);
        Set<Work> critical = new HashSet<>();
        List<Work> order = new ArrayList<>();
        waits.iterator().forEachRemaining(order::add);
        for (int i = order.size() - 1; i >= 0; i--) {
            Work one = order.get(i);
            boolean leads = Math.abs(one.to - end) < EXACT;
            for (DefaultEdge edge : waits.outgoingEdgesOf(one)) {
                leads |= critical.contains(waits.getEdgeTarget(edge));
            }
            if (leads) {
                critical.add(one);
            }
        }
        return critical;
    }
}
