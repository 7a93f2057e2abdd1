package org.shelterwright.app.cli.json;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.FitOption;
import org.shelterwright.solver.fit.FitRequest;
import org.shelterwright.solver.fit.FitResult;
import org.shelterwright.solver.fit.FitScore;
import org.shelterwright.solver.fit.WhyNot;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The result of {@code fit} as JSON. */
public final class FitJson {
    private FitJson() {}

    /**
     * Gives the result. Equal searches give equal text unless the budget is one of time.
     *
     * @param files what was written into the folder, the layouts first, in the order of the options
     */
    public static String of(
            ResultHead head,
            int status,
            FitRequest request,
            FitResult result,
            boolean stopped,
            Path folder,
            List<String> files) {
        ObjectNode root = head.begin()
                .put("status", status)
                .put("id", request.start().brief().id())
                .put("name", request.start().brief().name())
                .put("seed", request.seed());
        root.set("budget", budget(request.budget()));
        root.put("moves", result.moves()).put("stopped", stopped);
        ArrayNode options = root.putArray("options");
        for (int i = 0; i < result.options().size(); i++) {
            options.add(option(files.get(i), result.options().get(i)));
        }
        root.set("whyNot", whyNot(result.whyNot()));
        root.put("folder", folder.toString());
        ArrayNode list = root.putArray("files");
        files.forEach(list::add);
        return JsonText.write(root);
    }

    private static ObjectNode budget(Budget budget) {
        var time = budget.time();
        return JsonText.object()
                .put("moves", budget.moves())
                .put("timeS", time == null ? null : Double.valueOf(time.toMillis() / 1e3));
    }

    private static ObjectNode option(String file, FitOption option) {
        FitScore score = option.score();
        ObjectNode node = JsonText.object().put("file", file);
        node.set(
                "score",
                JsonText.object()
                        .put("hard", score.hard())
                        .put("medium", score.medium())
                        .put("soft", score.soft()));
        node.set("counts", LedgerJson.counts(option.ledger()));
        node.set("subjects", LedgerJson.subjects(option.ledger()));
        List<Row> rows = option.ledger().rows();
        node.set("rows", LedgerJson.rows(rows, option.layout()));
        return node;
    }

    private static @Nullable ObjectNode whyNot(@Nullable WhyNot whyNot) {
        if (whyNot == null) {
            return null;
        }
        ObjectNode node = JsonText.object().put("proven", whyNot.proven());
        ArrayNode reasons = node.putArray("reasons");
        whyNot.reasons().forEach(reasons::add);
        ArrayNode relaxations = node.putArray("relaxations");
        whyNot.relaxations().forEach(relaxations::add);
        return node;
    }
}
