package org.shelterwright.app.cli.json;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.solver.load.LoadRequest;
import org.shelterwright.solver.load.LoadResult;
import org.shelterwright.solver.load.model.Stowed;
import org.shelterwright.solver.load.set.LoadSet.SetProblem;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The result of {@code load} for a problem of a published set as JSON. */
public final class LoadJson {
    private LoadJson() {}

    /**
     * Gives the result. Equal searches give equal text unless the budget is one of time.
     *
     * @param file what was written; {@code null}: nothing
     */
    public static String of(
            ResultHead head, SetProblem problem, LoadRequest request, LoadResult result, @Nullable String file) {
        Duration time = request.budget().time();
        ObjectNode root = head.begin()
                .put("status", 0)
                .put("problem", problem.number())
                .put("support", request.problem().support().name().toLowerCase(java.util.Locale.ROOT))
                .put("seed", request.seed());
        root.set(
                "budget",
                JsonText.object()
                        .put("moves", request.budget().moves())
                        .put("timeS", time == null ? null : Double.valueOf(time.toMillis() / 1e3)));
        root.put("moves", result.moves())
                .put("pieces", problem.pieces())
                .put("loaded", result.load().stowed().size())
                .put("share", result.share())
                .put("file", file);
        ArrayNode rows = root.putArray("rows");
        for (Stowed one : result.load().stowed()) {
            Box box = one.box();
            rows.add(JsonText.object()
                    .put("type", problem.kinds().get(one.kind()).name())
                    .put("x", box.x0())
                    .put("y", box.y0())
                    .put("z", box.z0())
                    .put("dx", box.x1() - box.x0())
                    .put("dy", box.y1() - box.y0())
                    .put("dz", box.z1() - box.z0()));
        }
        return JsonText.write(root);
    }
}
