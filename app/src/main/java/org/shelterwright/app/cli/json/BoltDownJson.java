package org.shelterwright.app.cli.json;

import java.util.List;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.sliding.Stage;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.boltdown.Bolting;
import org.shelterwright.layouts.boltdown.Datum;
import org.shelterwright.layouts.boltdown.StepCheck;
import org.shelterwright.layouts.boltdown.StepWords;
import org.shelterwright.layouts.handling.Handling;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.solver.order.FoundOrder;
import org.shelterwright.solver.order.Schedule;
import org.shelterwright.solver.order.Shift;
import org.shelterwright.solver.order.Stuck;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The result of {@code bolt-down} as JSON. Lengths are millimetres, times minutes. */
public final class BoltDownJson {
    private BoltDownJson() {}

    /** Gives the result. */
    public static String of(
            ResultHead head,
            int status,
            Layout layout,
            BoltDownPlan plan,
            Schedule schedule,
            FoundOrder found,
            List<Row> rows,
            List<String> files) {
        ObjectNode root = head.begin()
                .put("status", status)
                .put("id", layout.brief().id())
                .put("name", layout.brief().name());
        ArrayNode steps = root.putArray("steps");
        for (int i = 0; i < plan.steps().size(); i++) {
            ObjectNode step = step(plan.steps().get(i));
            step.put("reason", i < found.reasons().size() ? found.reasons().get(i) : null);
            steps.add(step);
        }
        ArrayNode stuck = root.putArray("stuck");
        for (Stuck one : found.stuck()) {
            ObjectNode node = JsonText.object().put("unit", one.unit());
            texts(node.putArray("blockers"), one.blockers());
            stuck.add(node.put("sentence", one.sentence()));
        }
        texts(root.putArray("contradictions"), found.circles());
        root.set("schedule", schedule(schedule));
        root.set("rows", LedgerJson.rows(rows, layout));
        texts(root.putArray("files"), files);
        return JsonText.write(root);
    }

    private static ObjectNode step(BoltDownStep step) {
        Opening opening = step.passage().opening();
        ObjectNode node = JsonText.object()
                .put("number", step.number())
                .put("unit", step.unit().id())
                .put("name", step.unit().name())
                .put("through", opening == null ? null : opening.name());
        ArrayNode way = node.putArray("way");
        List<Stage> stages = step.passage().stages();
        for (int i = stages.size() - 1; i >= 0; i--) {
            Stage stage = stages.get(i);
            way.add(JsonText.object()
                    .put("turn", stage.quarters() * 90)
                    .put("lying", stage.lying())
                    .put("x", Lengths.millimetres(stage.shift().x()))
                    .put("y", Lengths.millimetres(stage.shift().y()))
                    .put("z", Lengths.millimetres(stage.shift().z())));
        }
        texts(node.putArray("moves"), StepWords.way(step.passage()));
        texts(node.putArray("datums"), step.datums().stream().map(Datum::text).toList());
        ArrayNode boltings = node.putArray("fixings");
        step.boltings().forEach(one -> boltings.add(bolting(one)));
        texts(node.putArray("tools"), step.tools());
        Handling handling = step.handling();
        texts(node.putArray("fittings"), StepWords.fittings(step));
        node.set("handling", handling == null ? null : handling(handling));
        texts(
                node.putArray("cables"),
                step.cables().stream().map(one -> one.text()).toList());
        ArrayNode checks = node.putArray("checks");
        for (StepCheck check : step.checks()) {
            checks.add(JsonText.object()
                    .put("id", check.id())
                    .put("kind", LedgerJson.id(check.kind()))
                    .put("text", check.text())
                    .put("expected", check.expected())
                    .put("unit", check.unit())
                    .put("tolerance", check.tolerance()));
        }
        texts(node.putArray("cautions"), step.cautions());
        return node.put("hold", step.hold())
                .put("minutesBench", step.minutesBench())
                .put("minutesIn", step.minutesIn())
                .put("minutesAt", step.minutesAt());
    }

    private static ObjectNode bolting(Bolting bolting) {
        ObjectNode node = JsonText.object()
                .put("text", bolting.text())
                .put("firstNm", bolting.firstNm())
                .put("finalNm", bolting.finalNm());
        ArrayNode places = node.putArray("places");
        for (Bolting.Place place : bolting.places()) {
            places.add(JsonText.object()
                    .put("order", place.number())
                    .put("name", place.name())
                    .put("into", place.into()));
        }
        return node;
    }

    private static ObjectNode handling(Handling handling) {
        return JsonText.object()
                .put("means", LedgerJson.id(handling.means()))
                .put("people", handling.people())
                .put("massKg", handling.massKg())
                .put("limitKg", handling.limitKg())
                .put("onePersonKg", handling.onePersonKg());
    }

    private static ObjectNode schedule(Schedule schedule) {
        ObjectNode node =
                JsonText.object().put("minutes", schedule.lengthMinutes()).put("fitters", schedule.fitters());
        ArrayNode shifts = node.putArray("shifts");
        for (Shift shift : schedule.shifts()) {
            ObjectNode one = JsonText.object()
                    .put("step", shift.step())
                    .put(
                            "work",
                            switch (shift.kind()) {
                                case BENCH -> "on the bench";
                                case BRINGING_IN -> "in";
                                case AT_PLACE -> "at place";
                            });
            ArrayNode fitters = one.putArray("fitters");
            shift.fitters().forEach(fitter -> fitters.add(fitter + 1));
            shifts.add(one.put("from", shift.fromMinutes())
                    .put("to", shift.toMinutes())
                    .put("critical", shift.critical()));
        }
        return node;
    }

    private static void texts(ArrayNode array, List<String> texts) {
        texts.forEach(array::add);
    }
}
