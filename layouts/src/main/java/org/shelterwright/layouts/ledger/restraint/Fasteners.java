package org.shelterwright.layouts.ledger.restraint;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.fastener.Fastener;
import org.shelterwright.catalog.fastener.FastenerTable;

/** The bolts whose strength is known, by thread and property class. Immutable. */
public final class Fasteners {
    private final Map<String, Fastener> byName = new LinkedHashMap<>();

    public Fasteners(Collection<FastenerTable> tables) {
        for (FastenerTable table : tables) {
            table.fasteners().forEach(one -> byName.put(name(one.thread(), one.grade()), one));
        }
    }

    /** Those of the tables that come with the program. */
    public static Fasteners builtIn() {
        return new Fasteners(BuiltInCatalog.fasteners());
    }

    @Nullable
    Fastener of(String thread, String grade) {
        return byName.get(name(thread, grade));
    }

    /** The stronger bolts of the same thread, then thicker ones of the same grade; the weakest first in each. */
    List<Fastener> strongerThan(Fastener bolt) {
        List<Fastener> all = byName.values().stream()
                .filter(one -> one.proofN() > bolt.proofN())
                .sorted(Comparator.comparingDouble(Fastener::proofN))
                .toList();
        return Stream.concat(
                        all.stream().filter(one -> one.thread().equals(bolt.thread())),
                        all.stream().filter(one -> one.grade().equals(bolt.grade())))
                .toList();
    }

    /** What people call a bolt, such as "M10 8.8". */
    public static String name(String thread, String grade) {
        return thread + " " + grade;
    }
}
