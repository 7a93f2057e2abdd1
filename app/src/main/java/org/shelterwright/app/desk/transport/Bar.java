package org.shelterwright.app.desk.transport;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.report.RowText;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.transport.scene.CarStatics;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/**
 * One bar of what a loaded car bears.
 *
 * @param use demand over capacity; {@code null} if it cannot be told
 * @param figure such as "9.4 of 20.0 t"
 */
record Bar(String title, @Nullable Double use, Verdict verdict, String figure) {
    private static final List<String> LIMITS = List.of(
            "transport.outline",
            "transport.load",
            "transport.end-ratio",
            "transport.wheel-ratio",
            "transport.metre-load",
            "transport.half-length",
            "transport.load-centre",
            "transport.deck-length");

    /** The wheels of a car from rear to front, then what its load as a whole is asked, as far as the ledger asks it. */
    static List<Bar> of(PlacedLoad load, Ledger ledger, double closeShare) {
        List<Bar> bars = new ArrayList<>();
        if (load.unknown().isEmpty()) {
            CarStatics.of(load)
                    .ifPresent(statics -> statics.groups().forEach(group -> {
                        Double rating = group.group().axleRatingKg();
                        Double use = rating == null ? null : Double.valueOf(group.axleKg() / rating);
                        bars.add(new Bar(
                                group.group().name() + (group.group().axles() > 1 ? ", each axle" : ""),
                                use,
                                verdict(use, closeShare),
                                tonnes(group.axleKg()) + (rating == null ? "" : " / " + tonnes(rating)) + Numerals.GAP
                                        + "t"));
                    }));
        }
        for (String limit : LIMITS) {
            worst(ledger, limit, load)
                    .ifPresent(row -> bars.add(new Bar(
                            title(row, load),
                            row.verdict() == Verdict.NOT_ASSESSED ? null : row.use(),
                            row.verdict(),
                            figures(row))));
        }
        return bars;
    }

    /** Great masses in tonnes, so that they have room. */
    private static String figures(Row row) {
        if (row.verdict() == Verdict.NOT_ASSESSED) {
            return "data missing";
        }
        Double demand = row.demand();
        Double capacity = row.capacity();
        boolean heavy = row.unit().equals("kg") || row.unit().equals("kg/m");
        return heavy && demand != null && capacity != null
                ? tonnes(demand) + " / " + tonnes(capacity) + Numerals.GAP
                        + row.unit().replace("kg", "t")
                : RowText.figures(row);
    }

    private static Optional<Row> worst(Ledger ledger, String limit, PlacedLoad load) {
        return ledger.rows().stream()
                .filter(row -> row.limit().equals(limit) && !row.doesNotApply())
                .filter(row -> row.units().contains(load.id()))
                .findFirst();
    }

    private static String title(Row row, PlacedLoad load) {
        String title = row.title();
        String end = ", " + load.name();
        String on = " on " + load.name();
        return title.endsWith(end)
                ? title.substring(0, title.length() - end.length())
                : title.endsWith(on) ? title.substring(0, title.length() - on.length()) : title;
    }

    private static Verdict verdict(@Nullable Double use, double closeShare) {
        if (use == null) {
            return Verdict.NOT_ASSESSED;
        }
        return use > 1 ? Verdict.BROKEN : use > closeShare ? Verdict.CLOSE : Verdict.MET;
    }

    private static String tonnes(double kg) {
        return Numerals.of(kg / 1000, 1);
    }
}
