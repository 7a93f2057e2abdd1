package org.shelterwright.app.workpack;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.svg.Svg;
import org.shelterwright.app.tables.Table;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.boltdown.PlanKey;
import org.shelterwright.layouts.boltdown.StepCheck;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.order.Schedule;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The work pack as one HTML file that needs nothing else: pictures, typeface and script are in it, and a rule in it forbids the
 * browser to fetch anything. What is signed stays in the browser until it is exported as a file.
 */
public final class TabletPack {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private final PackHead head;
    private final BoltDownPlan plan;
    private final Schedule schedule;
    private final Scene scene;
    private final Crew crew;
    private final StepHtml steps;

    public TabletPack(PackHead head, Scene scene, BoltDownPlan plan, Schedule schedule, Typeface typeface) {
        this.head = head;
        this.plan = plan;
        this.schedule = schedule;
        this.scene = scene;
        this.crew = new Crew(plan, schedule);
        this.steps = new StepHtml(head, plan, new StepScenes(scene, plan, typeface), new Svg(typeface));
    }

    /** Gives the file, in UTF-8. The same plan gives the same bytes. */
    public byte[] bytes() {
        Html html = new Html()
                .raw("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">"
                        + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">"
                        + "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; img-src data:; font-src data:;"
                        + " style-src 'unsafe-inline'; script-src 'unsafe-inline'\">")
                .element("title", "", head.name() + ", work pack")
                .raw("<style>")
                .raw(fonts())
                .raw(resource("pack.css"))
                .raw("</style></head><body>\n")
                .raw(
                        "<header class=\"top\"><div class=\"tools\"><button type=\"button\" data-go=\"0\">All steps</button>"
                                + "<label>Your name <input id=\"name\" autocomplete=\"name\"></label>"
                                + "<label>Wrench no., calibrated until <input id=\"wrench\"></label>"
                                + "<span id=\"signed\"></span></div><div class=\"tools\"><span id=\"told\" role=\"status\"></span>"
                                + "<button type=\"button\" id=\"print\">Print</button>"
                                + "<button type=\"button\" id=\"import\">Take over a record</button>"
                                + "<button type=\"button\" id=\"export\">Export the record</button>"
                                + "<input id=\"file\" type=\"file\" accept=\".json,application/json\" hidden></div></header>\n<main>\n");
        overview(html);
        for (BoltDownStep step : plan.steps()) {
            html.raw(steps.page(step, crew.who(step)));
        }
        return html.raw("</main>\n<script type=\"application/json\" id=\"pack\">")
                .raw(data())
                .raw("</script>\n<script>")
                .raw(resource("pack.js"))
                .raw("</script></body></html>\n")
                .toString()
                .getBytes(StandardCharsets.UTF_8);
    }

    private void overview(Html html) {
        html.raw("<section class=\"page\" id=\"page-0\"><div class=\"head\"><div>")
                .element("p", "class=\"small\"", "Work pack")
                .element("h2", "", head.name())
                .raw("</div><div class=\"right\">")
                .element("p", "class=\"small\"", "layout " + head.id() + ", checked " + head.date())
                .element(
                        "h2",
                        "",
                        plan.steps().size() + " steps, " + time(schedule.lengthMinutes()) + ", "
                                + (schedule.fitters() == 1 ? "one fitter" : schedule.fitters() + " fitters"))
                .raw("</div></div><div class=\"warn\"><h3>Before you begin</h3>")
                .list(
                        "ul",
                        "",
                        Stream.concat(Stream.of(head.caution()), PackWords.BEFORE.stream())
                                .toList());
        if (!crew.moreHands().isEmpty()) {
            html.element("p", "", crew.moreHands());
        }
        html.raw(
                "</div><h2 class=\"list\">Steps</h2><table><thead><tr><th class=\"n\">Step</th><th>Unit</th><th>Through</th>"
                        + "<th>Who</th><th class=\"n\">min</th><th>State</th><th></th></tr></thead><tbody>");
        for (BoltDownStep step : plan.steps()) {
            var opening = step.passage().opening();
            html.raw("<tr><td class=\"n\">" + step.number() + "</td>")
                    .element("td", "", step.unit().name())
                    .element("td", "", opening == null ? "" : opening.name())
                    .element("td", "", crew.who(step))
                    .element("td", "class=\"n\"", Long.toString(Math.round(step.minutes())))
                    .element("td", "data-state=\"" + Html.escaped(step.unit().id()) + "\"", "")
                    .raw("<td><button type=\"button\" data-go=\"" + step.number() + "\">Open</button></td></tr>");
        }
        html.raw("</tbody></table>");
        html.element("h2", "class=\"list\"", "When all is in").list("ul", "", PackWords.AFTER);
        if (!PackLists.racks(crew).rows().isEmpty()) {
            table(html, PackLists.racks(crew));
        }
        table(html, PackLists.fasteners(plan));
        table(html, PackLists.tools(plan));
        if (!PackLists.cables(scene, plan).rows().isEmpty()) {
            table(html, PackLists.cables(scene, plan));
        }
        labels(html);
        html.raw("</section>\n");
    }

    private static void table(Html html, Table table) {
        html.element("h2", "class=\"list\"", table.name()).raw("<table><thead><tr>");
        table.columns().forEach(column -> html.element("th", "", sentence(column)));
        html.raw("</tr></thead><tbody>");
        for (List<?> row : table.rows()) {
            html.raw("<tr>");
            row.forEach(cell -> html.element("td", "", cell == null ? "" : cell.toString()));
            html.raw("</tr>");
        }
        html.raw("</tbody></table>");
    }

    private void labels(Html html) {
        html.raw("<h2 class=\"list\">Labels</h2><div class=\"labels\">");
        for (BoltDownStep step : plan.steps()) {
            html.raw("<div class=\"label\">")
                    .element("b", "", step.number() + " " + step.unit().name())
                    .element(
                            "span",
                            "class=\"small\"",
                            step.datums().stream().map(one -> one.text()).collect(Collectors.joining(", ")))
                    .raw("</div>");
        }
        html.raw("</div>");
    }

    private String data() {
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        ObjectNode root = nodes.objectNode().put("layout", head.id()).put("pack", PlanKey.plan(plan));
        ArrayNode list = root.putArray("steps");
        for (BoltDownStep step : plan.steps()) {
            ObjectNode one = nodes.objectNode()
                    .put("unit", step.unit().id())
                    .put("name", step.unit().name())
                    .put("joints", PlanKey.joints(step))
                    .put("torque", !step.boltings().isEmpty())
                    .put("hold", step.hold() != null);
            ArrayNode checks = one.putArray("checks");
            for (StepCheck check : step.checks()) {
                checks.add(nodes.objectNode()
                        .put("id", check.id())
                        .put("expected", check.expected())
                        .put("unit", check.unit())
                        .put("tolerance", check.tolerance()));
            }
            list.add(one);
        }
        // A text within cannot end the script that holds it.
        return MAPPER.writeValueAsString(root).replace("<", "\\u003c");
    }

    private static String fonts() {
        StringBuilder css = new StringBuilder();
        for (Weight weight : Weight.values()) {
            int number = weight == Weight.REGULAR ? 400 : weight == Weight.MEDIUM ? 500 : 600;
            try (InputStream in = Typeface.file(weight)) {
                css.append("@font-face{font-family:\"")
                        .append(Typeface.FAMILY)
                        .append("\";font-weight:")
                        .append(number);
                css.append(";src:url(data:font/ttf;base64,")
                        .append(Base64.getEncoder().encodeToString(in.readAllBytes()));
                css.append(") format(\"truetype\")}\n");
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return css.toString();
    }

    private static String resource(String name) {
        try (InputStream in = TabletPack.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the program: build it again.");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String sentence(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private static String time(double minutes) {
        long whole = Math.round(minutes);
        return whole < 60 ? whole + " min" : whole / 60 + " h " + whole % 60 + " min";
    }
}
