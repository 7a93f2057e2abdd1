package org.shelterwright.app.cli.json;

import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.asbuilt.AsBuilt;
import org.shelterwright.layouts.asbuilt.Balance;
import org.shelterwright.layouts.asbuilt.Prediction;
import org.shelterwright.layouts.asbuilt.Reconciliation;
import org.shelterwright.layouts.layout.Layout;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The result of {@code weigh} as JSON. Lengths are millimetres. */
public final class WeighJson {
    private WeighJson() {}

    /** Gives the result. */
    public static String of(
            ResultHead head,
            int status,
            Layout layout,
            @Nullable AsBuilt built,
            @Nullable Prediction prediction,
            @Nullable Reconciliation found) {
        ObjectNode root = head.begin()
                .put("status", status)
                .put("id", layout.brief().id())
                .put("name", layout.brief().name());
        root.set("built", built == null ? null : built(built));
        root.set("weighed", found == null ? null : weighed(prediction, found));
        return JsonText.write(root);
    }

    private static ObjectNode built(AsBuilt built) {
        ObjectNode node = JsonText.object().put("complete", built.complete());
        ArrayNode deviations = node.putArray("deviations");
        for (AsBuilt.Deviation one : built.deviations()) {
            deviations.add(JsonText.object()
                    .put("unit", one.step().unit().id())
                    .put("check", one.check().id())
                    .put("measured", one.measured())
                    .put("off", one.off())
                    .put("within", one.within()));
        }
        ArrayNode open = node.putArray("open");
        built.open().forEach(open::add);
        ArrayNode voided = node.putArray("void");
        built.voided().forEach(voided::add);
        ArrayNode wrenches = node.putArray("wrenches");
        built.wrenches().forEach(wrenches::add);
        return node;
    }

    private static ObjectNode weighed(@Nullable Prediction prediction, Reconciliation found) {
        ObjectNode node = JsonText.object().put("differs", found.differs());
        node.set("weighed", balance(found.weighed()));
        node.set("predicted", balance(found.predicted()));
        Balance unlisted = found.unlisted();
        node.set("unlisted", unlisted == null ? null : balance(unlisted));
        ArrayNode near = node.putArray("near");
        found.near().forEach(part -> near.add(part.name()));
        ArrayNode corrections = node.putArray("corrections");
        found.corrections()
                .forEach(one -> corrections.add(
                        JsonText.object().put("of", one.part().name()).put("kg", one.kg())));
        ArrayNode missing = node.putArray("missing");
        if (prediction != null) {
            prediction.missing().forEach(missing::add);
        }
        return node;
    }

    private static ObjectNode balance(Balance balance) {
        Double z = balance.zM();
        return JsonText.object()
                .put("kg", balance.kg())
                .put("kgRange", balance.kgRange())
                .put("x", 1000 * balance.xM())
                .put("xRange", 1000 * balance.xRangeM())
                .put("y", 1000 * balance.yM())
                .put("yRange", 1000 * balance.yRangeM())
                .put("z", z == null ? null : Double.valueOf(1000 * z))
                .put("zRange", z == null ? null : Double.valueOf(1000 * balance.zRangeM()));
    }
}
