package org.shelterwright.app.desk.wires;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.session.Standing;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.cable.RouteShape;
import org.shelterwright.layouts.cable.WireEnd;
import org.shelterwright.layouts.layout.Run;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;

/**
 * A wire as the list tells it, in words and figures.
 *
 * @param way trays that it lies in, one after another; why there is none, if it has no route
 * @param length to cut (m)
 * @param findings such as "1 broken"; "none" if every row that names it is met
 */
record WireRow(
        String wire, String from, String to, String cable, String length, String way, String pinned, String findings) {
    /** All wires of the brief in its order, of which every word typed stands in the row. */
    static List<WireRow> of(Standing standing, String typed) {
        List<WireRow> rows = new ArrayList<>();
        for (LaidWire wire : CableNet.of(standing.scene()).wires()) {
            WireRow row = of(wire, standing);
            if (row.holds(typed)) {
                rows.add(row);
            }
        }
        return rows;
    }

    /** The row in one sentence, for a screen reader. */
    String sentence() {
        return "Wire " + wire + " from " + from + " to " + to + ", " + cable + ", "
                + (length.isEmpty() ? way : length + " m by " + way) + (pinned.isEmpty() ? "" : ", pinned")
                + ", findings: " + findings + ".";
    }

    private boolean holds(String typed) {
        String all =
                String.join(" ", wire, from, to, cable, way, pinned, findings).toLowerCase(Locale.ROOT);
        for (String word : typed.strip().toLowerCase(Locale.ROOT).split("\\s+")) {
            if (!all.contains(word)) {
                return false;
            }
        }
        return true;
    }

    private static WireRow of(LaidWire laid, Standing standing) {
        Wire wire = laid.wire();
        RouteShape shape = laid.shape();
        boolean pinned = shape != null && shape.route().pinned();
        Cable cable = laid.cable();
        String kind = wire.type() == null ? wire.family() : wire.type();
        return new WireRow(
                wire.id(),
                name(laid.from(), wire.from()),
                name(laid.to(), wire.to()),
                cable == null ? String.valueOf(kind) : cable.name(),
                laid.routed() && laid.cutLength() > 0 ? Numerals.of(laid.cutLength() / 1e6, 2) : "",
                laid.routed() && shape != null ? way(shape) : String.valueOf(laid.gap()),
                pinned ? "pinned" : "",
                findings(wire.id(), standing));
    }

    private static String name(@Nullable WireEnd end, String text) {
        return end == null ? text : end.name();
    }

    private static String way(RouteShape shape) {
        Set<String> trays = new LinkedHashSet<>();
        for (Run run : shape.route().runs()) {
            if (run.tray() != null) {
                trays.add(run.tray());
            }
        }
        return trays.isEmpty() ? "outside trays" : String.join(", ", trays);
    }

    private static String findings(String wire, Standing standing) {
        Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
        Pattern named = Pattern.compile("\\b" + Pattern.quote(wire) + "(?![\\w-])");
        for (Row row : standing.ledger().rows()) {
            if (row.subject() == Subject.CABLES && named.matcher(row.title()).find()) {
                counts.merge(row.verdict(), 1, Integer::sum);
            }
        }
        List<String> words = new ArrayList<>();
        counts.forEach((verdict, count) -> {
            if (verdict != Verdict.MET) {
                words.add(count + " " + verdict.word());
            }
        });
        return words.isEmpty() ? "none" : String.join(", ", words);
    }
}
