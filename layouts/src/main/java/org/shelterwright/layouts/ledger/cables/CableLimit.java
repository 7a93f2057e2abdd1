package org.shelterwright.layouts.ledger.cables;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.scene.Scene;

/** A limit of cables. It does not apply where no wires are asked for. */
abstract class CableLimit extends NamedLimit implements Limit.OfWhole {
    CableLimit(String id, String title, Severity severity, Source source) {
        super(id, Subject.CABLES, title, severity, source, "The brief asks for no wires.");
    }

    @Override
    public final void assess(Scene scene, Rows rows) {
        if (!scene.brief().wires().isEmpty()) {
            assess(scene, CableNet.of(scene), rows);
        }
    }

    abstract void assess(Scene scene, CableNet net, Rows rows);

    /** The rows that people must look at, and of the met ones the tightest. */
    static final class Told {
        private final List<Row> open = new ArrayList<>();
        private @Nullable Row tightest;

        void add(Row row) {
            if (row.verdict() != Verdict.MET) {
                open.add(row);
            } else if (tightest == null || use(row) > use(tightest)) {
                tightest = row;
            }
        }

        boolean isEmpty() {
            return open.isEmpty() && tightest == null;
        }

        void into(Rows rows) {
            open.forEach(rows::add);
            if (tightest != null) {
                rows.add(tightest);
            }
        }

        private static double use(Row row) {
            Double use = row.use();
            return use == null ? 0 : use;
        }
    }
}
