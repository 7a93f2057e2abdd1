package org.shelterwright.app.cli.json;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.StudyAxis;
import org.shelterwright.layouts.study.results.Governing;
import org.shelterwright.layouts.study.results.Measure;
import org.shelterwright.layouts.study.results.RunResult;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Studies as JSON. A value that there is not is {@code null}. */
public final class StudyJson {
    private StudyJson() {}

    /** How many runs a study has. */
    public static String count(ResultHead head, SealedStudy study) {
        ObjectNode root = begin(head, study);
        root.put("runs", study.plan().count())
                .put("leftOut", study.plan().leftOut())
                .put("moves", study.study().moves());
        ObjectNode axes = root.putObject("axes");
        for (StudyAxis axis : study.study().axes()) {
            ArrayNode settings = axes.putArray(axis.id());
            axis.settings().forEach(setting -> settings.add(setting.id()));
        }
        return JsonText.write(root);
    }

    /**
     * Results of runs.
     *
     * @param total how many runs the study has
     * @param files what was written
     */
    public static String runs(
            ResultHead head, int status, SealedStudy study, int total, List<RunResult> runs, List<String> files) {
        ObjectNode root = begin(head, study).put("status", status).put("runs", total);
        ArrayNode results = root.putArray("results");
        runs.forEach(run -> results.add(run(run)));
        ArrayNode list = root.putArray("files");
        files.forEach(list::add);
        return JsonText.write(root);
    }

    private static ObjectNode begin(ResultHead head, SealedStudy study) {
        return head.begin()
                .put("id", study.study().id())
                .put("name", study.study().name())
                .put("fingerprint", study.fingerprint());
    }

    private static ObjectNode run(RunResult run) {
        ObjectNode node = JsonText.object().put("run", run.run());
        ObjectNode settings = node.putObject("settings");
        for (Map.Entry<String, String> setting : run.settings().entrySet()) {
            settings.put(setting.getKey(), setting.getValue());
        }
        node.put("seed", run.seed()).put("verdict", LedgerJson.id(run.verdict()));
        node.set(
                "counts",
                JsonText.object()
                        .put("broken", run.counts().broken())
                        .put("close", run.counts().close())
                        .put("not-assessed", run.counts().notAssessed())
                        .put("met", run.counts().met()));
        node.set("governing", governing(run.governing()));
        ObjectNode measures = node.putObject("measures");
        for (Measure measure : Measure.values()) {
            var value = measure.of(run);
            measures.put(measure.id(), value.isPresent() ? Double.valueOf(value.getAsDouble()) : null);
        }
        return node.put("moves", run.moves()).put("refused", run.refused());
    }

    private static @Nullable ObjectNode governing(@Nullable Governing governing) {
        if (governing == null) {
            return null;
        }
        ObjectNode node = JsonText.object().put("limit", governing.limit()).put("title", governing.title());
        ArrayNode units = node.putArray("units");
        governing.units().forEach(units::add);
        return node.put("state", governing.state())
                .put("demand", governing.demand())
                .put("capacity", governing.capacity())
                .put("margin", governing.margin())
                .put("use", governing.use())
                .put("unit", governing.unit());
    }
}
