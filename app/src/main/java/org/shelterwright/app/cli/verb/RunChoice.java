package org.shelterwright.app.cli.verb;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.study.RunFilter;
import org.shelterwright.app.study.StudyColumn;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.NearestName;
import org.shelterwright.layouts.study.Setting;
import org.shelterwright.layouts.study.Study;
import org.shelterwright.layouts.study.StudyAxis;
import org.shelterwright.layouts.study.results.RunResult;
import picocli.CommandLine.Option;

/** Options that choose and order runs, and columns of their table. */
final class RunChoice {
    @Option(
            names = "--where",
            paramLabel = "AXIS=SETTING",
            description = "Only runs with this setting; given again for an axis, with any of them.")
    private List<String> where = new ArrayList<>();

    @Option(
            names = "--verdict",
            paramLabel = "VERDICT",
            split = ",",
            description = "Only runs whose worst verdict is one of these: met, close, not-assessed, broken, refused.")
    private List<String> verdicts = new ArrayList<>();

    @Option(names = "--sort", paramLabel = "COLUMN", description = "Order by a column (by run if not given).")
    private @Nullable String sort;

    @Option(names = "--descending", description = "The greatest first.")
    private boolean descending;

    @Option(
            names = "--columns",
            paramLabel = "COLUMN",
            split = ",",
            description =
                    "Columns to show, by their names: run, each axis, seed, verdict, limit, limited, state, margin,"
                            + " unit, use, mass, gross, centre-x, centre-y, centre-z, axle-reserve, cable, free, wishes, seconds,"
                            + " and more. All of them stand in the written tables.")
    private List<String> columns = new ArrayList<>();

    /** The chosen runs, in order. */
    List<RunResult> of(List<RunResult> runs, Study study) {
        Map<String, List<String>> wanted = wanted(study);
        verdicts.forEach(one -> known(one, RunFilter.VERDICTS, "verdict", "--verdict"));
        String by = sort;
        StudyColumn column = by == null ? null : column(by, study, "--sort");
        return new RunFilter(wanted, Set.copyOf(verdicts), column, descending).of(runs);
    }

    /** The chosen columns; without a choice, what is read at a glance. */
    List<StudyColumn> columns(Study study) {
        List<String> ids = new ArrayList<>(columns);
        if (ids.isEmpty()) {
            ids.add("run");
            study.axes().forEach(axis -> ids.add(axis.id()));
            ids.addAll(List.of("seed", "verdict", "use", "mass", "free", "limited"));
        }
        return ids.stream().map(id -> column(id, study, "--columns")).toList();
    }

    private Map<String, List<String>> wanted(Study study) {
        Map<String, List<String>> wanted = new LinkedHashMap<>();
        for (String one : where) {
            int at = one.indexOf('=');
            if (at < 1) {
                throw new InputException("--where", "\"" + one + "\" must name an axis and a setting: body=box-4200.");
            }
            String axis = one.substring(0, at);
            String setting = one.substring(at + 1);
            known(axis, study.axes().stream().map(StudyAxis::id).toList(), "axis", "--where");
            List<String> settings = study.axes().stream()
                    .filter(each -> each.id().equals(axis))
                    .flatMap(each -> each.settings().stream())
                    .map(Setting::id)
                    .toList();
            known(setting, settings, "setting", "--where");
            wanted.computeIfAbsent(axis, key -> new ArrayList<>()).add(setting);
        }
        return wanted;
    }

    private static StudyColumn column(String id, Study study, String option) {
        List<StudyColumn> all = StudyColumn.of(study);
        known(id, all.stream().map(StudyColumn::id).toList(), "column", option);
        return all.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    }

    private static void known(String id, List<String> known, String kind, String option) {
        if (!known.contains(id)) {
            throw new InputException(
                    option, "The " + kind + " \"" + id + "\" is not known." + NearestName.hint(id, known));
        }
    }
}
