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

    /** What was written: the folder, the files in it, and which of them holds which layout. */
    public record Written(Path folder, List<String> layouts, List<String> documents) {
        public Written {
            layouts = List.copyOf(layouts);
            documents = List.copyOf(documents);
        }
    }

    /** Gives the result. Equal searches give equal text unless the budget is one of time. */
    public static String of(
            ResultHead head, int status, FitRequest request, FitResult result, boolean stopped, Written written) {
        ObjectNode root = head.begin()
                .put("status", status)
                .put("id", request.start().brief().id())
                .put("name", request.start().brief().name())
                .put("seed", request.seed());
        root.set("budget", budget(request.budget()));
        root.put("moves", result.moves()).put("stopped", stopped);
        ArrayNode options = root.putArray("options");
        for (int i = 0; i < result.options().size(); i++) {
            options.add(option(written.layouts().get(i), result.options().get(i)));
        }
        root.set("whyNot", whyNot(result.whyNot()));
        root.put("folder", written.folder().toString());
        ArrayNode files = root.putArray("files");
        written.layouts().forEach(files::add);
        written.documents().forEach(files::add);
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
