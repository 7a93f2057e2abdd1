package org.shelterwright.app.workpack;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.svg.Svg;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.boltdown.Bolting;
import org.shelterwright.layouts.boltdown.CableTask;
import org.shelterwright.layouts.boltdown.StepCheck;
import org.shelterwright.layouts.boltdown.StepWords;
import org.shelterwright.layouts.handling.Handling;

/** One step as a page of the tablet's work pack. */
final class StepHtml {
    private static final double PATTERN_WIDTH = 56;
    private static final double PATTERN_HEIGHT = 32;

    private final PackHead head;
    private final BoltDownPlan plan;
    private final StepScenes scenes;
    private final Svg svg;

    StepHtml(PackHead head, BoltDownPlan plan, StepScenes scenes, Svg svg) {
        this.head = head;
        this.plan = plan;
        this.scenes = scenes;
        this.svg = svg;
    }

    String page(BoltDownStep step, String who) {
        int number = step.number();
        Html html = new Html()
                .raw("<section class=\"page\" id=\"page-" + number + "\" data-step=\"" + number + "\">")
                .raw("<div class=\"head\"><div>")
                .element("p", "class=\"small\"", head.name() + ", work pack")
                .element("h2", "", "Step " + number + " of " + plan.steps().size())
                .raw("</div><div class=\"right\">")
                .element("p", "class=\"small\"", who + ", about " + Numerals.of(step.minutes(), 0) + " min")
                .element("h2", "", step.unit().name() + (step.boltings().isEmpty() ? " in" : " in and bolted down"))
                .raw("</div></div>");
        strip(html);
        html.raw("<div class=\"picture\">").raw(drawn(scenes.picture(step))).raw("</div>");
        way(html, step);
        html.element("p", "class=\"set\"", StepWords.set(step));
        html.element("p", "class=\"small\"", "Ringed numbers are the steps of what is in already; lengths in mm.");
        if (!step.cautions().isEmpty()) {
            html.raw("<div class=\"warn\" role=\"note\"><h3>Caution</h3>")
                    .list("ul", "", step.cautions())
                    .raw("</div>");
        }
        html.raw("<div class=\"cards\">");
        lift(html, step);
        bolt(html, step);
        torque(html, step);
        html.raw("</div>");
        if (!step.boltings().isEmpty()) {
            html.element("p", "", "Holes:  " + StepWords.holes(step.boltings()) + ".");
            if (!StepWords.counting(step).isEmpty()) {
                html.element("p", "class=\"small\"", StepWords.counting(step));
            }
        }
        tasks(html, "Fit", StepWords.fittings(step));
        tasks(
                html,
                "Connect, with a label on each end",
                step.cables().stream().map(CableTask::text).toList());
        sign(html, step);
        nav(html, step);
        return html.raw("<footer>")
                .element("span", "", head.caution())
                .element("span", "", "layout " + head.id() + ", checked " + head.date())
                .raw("</footer></section>\n")
                .toString();
    }

    private void strip(Html html) {
        html.raw("<div class=\"strip\" aria-label=\"Steps\">");
        for (BoltDownStep one : plan.steps()) {
            html.raw("<button type=\"button\" data-go=\"" + one.number() + "\" aria-label=\""
                    + Html.escaped("Step " + one.number() + ", " + one.unit().name()) + "\"></button>");
        }
        html.raw("</div>");
    }

    private static void way(Html html, BoltDownStep step) {
        html.raw("<ol class=\"way\">");
        List<String> moves = StepWords.way(step.passage());
        for (int i = 0; i < moves.size(); i++) {
            html.raw("<li>")
                    .element("b", "", String.valueOf((char) ('a' + i)))
                    .text(moves.get(i))
                    .raw("</li>");
        }
        html.raw("</ol>");
    }

    private static void lift(Html html, BoltDownStep step) {
        html.raw("<div class=\"card\"><h3>Lift</h3>");
        Handling handling = step.handling();
        if (handling == null) {
            html.element("p", "class=\"big\"", "mass not known");
        } else {
            html.element("p", "class=\"big\"", "up to " + Numerals.short3(handling.massKg()) + " kg")
                    .element("p", "", StepWords.handling(handling) + ".");
        }
        html.raw("</div>");
    }

    private static void tasks(Html html, String title, List<String> tasks) {
        if (!tasks.isEmpty()) {
            html.raw("<div class=\"card connect\">")
                    .element("h3", "", title)
                    .list("ul", "", tasks)
                    .raw("</div>");
        }
    }

    private void bolt(Html html, BoltDownStep step) {
        html.raw("<div class=\"card\"><h3>Bolt</h3>");
        if (step.boltings().isEmpty()) {
            html.element("p", "", "Loose: it is only set down.").raw("</div>");
            return;
        }
        for (Bolting one : step.boltings()) {
            html.element("p", "", one.text() + ", washer under each head");
        }
        html.raw(drawn(new Drawing(
                "Order of tightening",
                PATTERN_WIDTH,
                PATTERN_HEIGHT,
                BoltPattern.shapes(step, new Bounds(2, 2, PATTERN_WIDTH - 2, PATTERN_HEIGHT - 2)))));
        html.element("p", "class=\"small\"", "Numbers give the order; " + BoltPattern.seen(step) + ".")
                .raw("</div>");
    }

    private static void torque(Html html, BoltDownStep step) {
        html.raw("<div class=\"card\"><h3>Torque</h3>");
        if (step.boltings().isEmpty()) {
            html.element("p", "", "None.");
        }
        for (Bolting one : step.boltings()) {
            if (step.boltings().size() > 1) {
                html.element("p", "class=\"small\"", one.text());
            }
            Double first = one.firstNm();
            Double last = one.finalNm();
            if (last == null) {
                html.element("p", "", "Not known: " + one.missing());
                continue;
            }
            if (first != null) {
                html.raw("<p class=\"row\"><span>first</span>")
                        .element("b", "class=\"big\"", Numerals.short3(first) + " N·m")
                        .raw("</p>");
            }
            html.raw("<p class=\"row\"><span>then</span>")
                    .element("b", "class=\"big\"", Numerals.short3(last) + " N·m")
                    .raw("</p>");
        }
        if (!step.tools().isEmpty()) {
            html.element("p", "class=\"small\"", "Tools: " + String.join(", ", step.tools()));
        }
        html.raw("</div>");
    }

    private static void sign(Html html, BoltDownStep step) {
        html.raw("<div class=\"sign\"><div class=\"title\"><h3>Check and sign</h3><p class=\"small count\"></p></div>"
                + "<div class=\"checks\">");
        for (StepCheck check : step.checks()) {
            String id = Html.escaped(check.id());
            html.raw("<div class=\"check\" data-check=\"" + id + "\"><input type=\"checkbox\" id=\"c-" + id
                            + "\"><label for=\"c-" + id + "\">")
                    .element("b", "", check.text())
                    .element("span", "class=\"small\"", check.hint())
                    .raw("</label>");
            Double expected = check.expected();
            if (expected != null) {
                html.raw("<input class=\"value\" inputmode=\"decimal\" aria-label=\""
                        + Html.escaped("measured, " + check.unit()) + "\" placeholder=\"" + Html.escaped(check.unit())
                        + "\"><span class=\"off\" role=\"alert\" hidden></span>");
            } else {
                html.raw("<span></span>");
            }
            html.raw("</div>");
        }
        html.raw("</div><div class=\"note\"><label>Note<textarea></textarea></label></div>");
        String hold = step.hold();
        if (hold != null) {
            html.element("p", "class=\"hold\"", hold)
                    .raw(
                            "<div class=\"people\"><label>Released by (second person)<br><input class=\"second\"></label></div>");
        }
        html.raw("<p class=\"signed\" hidden></p></div>");
    }

    private void nav(Html html, BoltDownStep step) {
        int number = step.number();
        String before = number == 1
                ? "All steps"
                : (number - 1) + ", " + plan.steps().get(number - 2).unit().name();
        boolean last = number == plan.steps().size();
        String next = last
                ? "All steps"
                : (number + 1) + ", " + plan.steps().get(number).unit().name();
        html.raw("<div class=\"nav\"><button type=\"button\" data-go=\"" + (number - 1) + "\">‹ ")
                .text(before)
                .raw(
                        "</button><button type=\"button\" class=\"chief do-sign\"></button><button type=\"button\" data-go=\""
                                + (last ? 0 : number + 1) + "\">")
                .text(next)
                .raw(" ›</button><button type=\"button\" class=\"undo\" hidden>Take the signature back</button></div>");
    }

    /** A drawing as part of a page: as wide as its place. */
    private String drawn(Drawing drawing) {
        String text = new String(svg.write(drawing), StandardCharsets.UTF_8);
        String markup = text.substring(text.indexOf("<svg"));
        return markup.replaceFirst(" width=\"[^\"]*\" height=\"[^\"]*\"", " role=\"img\"")
                .strip();
    }
}
