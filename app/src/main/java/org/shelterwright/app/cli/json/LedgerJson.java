package org.shelterwright.app.cli.json;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Ledgers as JSON. A value that there is not is {@code null}; lengths are millimetres. */
final class LedgerJson {
    private LedgerJson() {}

    /** How many rows have which verdict. */
    static ObjectNode counts(Ledger ledger) {
        ObjectNode counts = JsonText.object();
        for (Verdict verdict : Verdict.values()) {
            counts.put(id(verdict), ledger.count(verdict));
        }
        return counts;
    }

    /** The worst verdict of each subject that has rows. */
    static ObjectNode subjects(Ledger ledger) {
        ObjectNode subjects = JsonText.object();
        for (Map.Entry<Subject, Verdict> subject : ledger.bySubject().entrySet()) {
            subjects.put(id(subject.getKey()), id(subject.getValue()));
        }
        return subjects;
    }

    static ArrayNode rows(List<Row> rows, Layout layout) {
        ArrayNode array = JsonText.NODES.arrayNode();
        rows.forEach(row -> array.add(row(row, layout)));
        return array;
    }

    private static ObjectNode row(Row row, Layout layout) {
        return row(row, layout.acceptance(row.limit(), row.units()).orElse(null));
    }

    /**
     * A row.
     *
     * @param acceptance what a person has accepted of it; {@code null} if nobody has
     */
    static ObjectNode row(Row row, @Nullable Acceptance acceptance) {
        ObjectNode node = JsonText.object()
                .put("limit", row.limit())
                .put("subject", id(row.subject()))
                .put("title", row.title());
        ArrayNode units = node.putArray("units");
        row.units().forEach(units::add);
        node.set("place", place(row.place()));
        node.put("state", row.state())
                .put("sense", id(row.sense()))
                .put("demand", row.demand())
                .put("nominal", row.nominal())
                .put("capacity", row.capacity())
                .put("use", row.share())
                .put("margin", row.margin())
                .put("unit", row.unit())
                .put("verdict", id(row.verdict()))
                .put("finding", row.finding())
                .put("mend", row.mend())
                .put("source", row.source().text())
                .put("trust", id(row.source().trust()));
        node.set("accepted", acceptance == null ? null : accepted(acceptance));
        return node;
    }

    private static ObjectNode accepted(Acceptance acceptance) {
        return JsonText.object()
                .put("by", acceptance.by())
                .put("date", acceptance.date())
                .put("reason", acceptance.reason());
    }

    private static @Nullable ObjectNode place(@Nullable Box box) {
        if (box == null) {
            return null;
        }
        ObjectNode node = JsonText.object();
        point(node.putArray("from"), box.x0(), box.y0(), box.z0());
        point(node.putArray("to"), box.x1(), box.y1(), box.z1());
        return node;
    }

    private static void point(ArrayNode array, int... micrometres) {
        for (int length : micrometres) {
            BigDecimal mm = Lengths.millimetres(length);
            array.add(mm);
        }
    }

    /** Names constants as the files do. */
    static String id(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
