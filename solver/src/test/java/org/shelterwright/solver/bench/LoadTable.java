package org.shelterwright.solver.bench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.shelterwright.solver.bench.LoadRows.Row;
import org.shelterwright.solver.load.model.Support;

/** The tables of the single-container sets, from all runs with one seed and one kind of clock. */
final class LoadTable {
    /** What a throw-away prototype of this search reached on problems 1 to 10, by class (%): 5 s on the wall, two at a time. */
    private static final Map<Support, Map<Integer, Double>> PROTOTYPE = Map.of(
            Support.FULL, Map.of(1, 94.27, 4, 95.87, 7, 95.17, 9, 93.84, 12, 91.98, 15, 90.40),
            Support.NONE, Map.of(1, 95.56, 4, 96.44, 7, 95.92, 9, 95.62, 12, 95.17, 15, 94.71));

    /** Of so many problems of a class, as a whole table has them, a mean is told without their number. */
    private static final int PROBLEMS = 10;

    private final LoadSetting setting;
    private final List<Row> rows;
    private final LoadRecords records = new LoadRecords();

    LoadTable(LoadSetting setting, List<Row> all) {
        this.setting = setting;
        this.rows = all.stream()
                .filter(row -> row.seed() == setting.seed() && row.clock().equals(setting.cpu() ? "cpu" : "wall"))
                .toList();
    }

    String text(Machine machine) {
        return """
                # Loading one container

                The single-container sets of Bischoff and Ratcliff (1995) and Davies and Bischoff (1999): share of the volume of
                the container that is filled (%%). One thread an instance; the limit is %s and includes making the
                blocks. Every load is checked from scratch, in whole numbers, by code of its own: inside, no
                overlap, allowed stance, counts, and with full support the whole base of each piece. Each run is a line of
                [load-classes.csv](load-classes.csv).

                Records are means over 100 problems a class, made in 150 to 500 s on older machines; "seen" was read in a source. Here fewer
                problems are run, so compare with the standard error (of the mean over the problems, after ±) in mind. The prototype is a
                throw-away one of the same search: problems 1 to 10, 5 s on the wall.

                %s
                %d at a time, seed %d. Date: %s.

                %s""".formatted(
                        setting.cpu() ? "processor time of its thread" : "wall-clock time",
                        machine.text(),
                        setting.threads(),
                        setting.seed(),
                        setting.date(),
                        tables());
    }

    private String tables() {
        StringBuilder text = new StringBuilder();
        for (Support support : Support.values()) {
            List<Row> of = rows.stream().filter(row -> row.support() == support).toList();
            if (!of.isEmpty()) {
                text.append(support == Support.FULL ? "## Full support\n\n" : "## Without support\n\n")
                        .append(classes(support, of))
                        .append('\n')
                        .append(times(of));
            }
        }
        return text.toString();
    }

    /** Class by class, a column for each limit. */
    private String classes(Support support, List<Row> of) {
        List<Double> limits = of.stream().map(Row::seconds).distinct().sorted().toList();
        List<String> heads = new ArrayList<>(List.of("class", "kinds", "pieces, mean"));
        limits.forEach(limit -> heads.add(Table.figure(limit) + " s"));
        heads.addAll(List.of("prototype", "record"));
        Table table = new Table(heads.toArray(String[]::new));
        Map<Integer, List<Row>> byClass = byClass(of);
        byClass.forEach((set, list) -> {
            List<Object> cells = new ArrayList<>(List.of(set, list.get(0).kinds(), mean(list, Row::pieces)));
            limits.forEach(limit -> cells.add(told(at(list, limit))));
            Double prototype = PROTOTYPE.get(support).get(set);
            cells.add(prototype == null ? "" : LoadRuns.hundredths(prototype));
            cells.add(records.best(support, set));
            table.add(cells.toArray());
        });
        List<Object> cells = new ArrayList<>(List.of("mean", "", ""));
        for (double limit : limits) {
            cells.add(overClasses(byClass, limit));
        }
        cells.add(LoadRuns.hundredths(mean(PROTOTYPE.get(support).values())));
        cells.add(LoadRuns.hundredths(byClass.keySet().stream()
                .mapToDouble(set -> records.value(support, set))
                .average()
                .orElse(Double.NaN)));
        table.add(cells.toArray());
        return table.text();
    }

    /** A mean over classes, of equal weight, with its standard error from those of the classes. */
    private static String overClasses(Map<Integer, List<Row>> byClass, double limit) {
        List<List<Row>> lists = byClass.values().stream()
                .map(list -> at(list, limit))
                .filter(list -> !list.isEmpty())
                .toList();
        double squares =
                lists.stream().mapToDouble(list -> error(list) * error(list)).sum();
        String mean =
                LoadRuns.hundredths(mean(lists.stream().map(LoadTable::mean).toList()));
        return lists.stream().allMatch(list -> list.size() < 2)
                ? mean
                : mean + " ± " + LoadRuns.hundredths(Math.sqrt(squares) / lists.size());
    }

    /** The same problems with each limit: only those that were run with all of them. */
    private static String times(List<Row> of) {
        List<Double> limits = of.stream().map(Row::seconds).distinct().sorted().toList();
        List<Row> paired = of.stream()
                .filter(row -> limits.stream()
                        .allMatch(limit -> at(of, limit).stream()
                                .anyMatch(o -> o.set() == row.set() && o.problem() == row.problem())))
                .toList();
        if (limits.size() < 2 || paired.isEmpty()) {
            return "";
        }
        Map<Integer, List<Row>> byClass = byClass(paired);
        List<String> heads = new ArrayList<>(List.of("limit (s)", "problems", "mean over classes"));
        byClass.keySet().forEach(set -> heads.add("class " + set));
        Table table = new Table(heads.toArray(String[]::new));
        for (double limit : limits) {
            List<Object> cells = new ArrayList<>(List.of(
                    Table.figure(limit),
                    at(paired, limit).size(),
                    LoadRuns.hundredths(mean(byClass.values().stream()
                            .map(list -> mean(at(list, limit)))
                            .toList()))));
            byClass.values().forEach(list -> cells.add(LoadRuns.hundredths(mean(at(list, limit)))));
            table.add(cells.toArray());
        }
        return "Growth with time, on the problems that were run with every limit:\n\n" + table.text() + "\n";
    }

    private static Map<Integer, List<Row>> byClass(List<Row> rows) {
        Map<Integer, List<Row>> byClass = new TreeMap<>();
        rows.forEach(row ->
                byClass.computeIfAbsent(row.set(), k -> new ArrayList<>()).add(row));
        return byClass;
    }

    private static List<Row> at(List<Row> rows, double limit) {
        return rows.stream().filter(row -> row.seconds() == limit).toList();
    }

    private static String told(List<Row> list) {
        return list.isEmpty()
                ? "–"
                : LoadRuns.hundredths(mean(list))
                        + (list.size() < 2 ? "" : " ± " + LoadRuns.hundredths(error(list)))
                        + (list.size() == PROBLEMS ? "" : " (" + list.size() + ")");
    }

    private static double mean(List<Row> rows) {
        return mean(rows, Row::percent);
    }

    private static double mean(List<Row> rows, ToDoubleFunction<Row> of) {
        return rows.stream().mapToDouble(of).average().orElse(Double.NaN);
    }

    private static double mean(Collection<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
    }

    private static double error(List<Row> rows) {
        double mean = mean(rows);
        double squares = rows.stream()
                .mapToDouble(row -> (row.percent() - mean) * (row.percent() - mean))
                .sum();
        return Math.sqrt(squares / Math.max(1, rows.size() - 1) / rows.size());
    }
}
