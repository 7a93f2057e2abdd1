package org.shelterwright.layouts.ledger.stowage;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.piece.DangerousGoods;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/**
 * Dangerous goods that must not lie beside each other ride in different units. Demand: number of pairs in one unit, of 0.
 *
 * <p>Source: segregation by classes as in the IMDG Code, 7.2.4 (from memory); the classes that each piece states.
 */
final class GoodsApart extends NamedLimit implements Limit.OfWhole {
    GoodsApart() {
        super(
                "stowage.goods-apart",
                Subject.STOWAGE,
                "Dangerous goods kept apart",
                Severity.HARD,
                Source.fromMemory("IMDG Code", "7.2.4, segregation by classes; classes as the pieces state"),
                "No unit holds dangerous goods.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        scene.interiors().stowages().forEach((id, all) -> scene.unit(id).ifPresent(unit -> {
            List<InPlace> goods =
                    all.stream().filter(piece -> piece.loose().goods() != null).toList();
            if (goods.isEmpty()) {
                return;
            }
            List<String> pairs = new ArrayList<>();
            for (int i = 0; i < goods.size(); i++) {
                for (int j = 0; j < i; j++) {
                    DangerousGoods a = goods.get(j).loose().goods();
                    DangerousGoods b = goods.get(i).loose().goods();
                    if (a != null && b != null && a.apart(b)) {
                        pairs.add(goods.get(j).name() + " (class " + a.hazardClass() + ") and "
                                + goods.get(i).name() + " (class " + b.hazardClass() + ")");
                    }
                }
            }
            RowDraft draft = rows.draft(this, title() + ", " + unit.name())
                    .units(unit)
                    .place(unit.outline(Situation.ON_THE_ROAD));
            rows.add(
                    pairs.isEmpty()
                            ? draft.held("The dangerous goods in " + unit.name() + " may lie beside each other.")
                            : draft.mend("Put one of them into another unit.")
                                    .atMost(
                                            pairs.size(),
                                            0,
                                            "pairs",
                                            Wording.list(pairs) + " must not lie beside each other in " + unit.name()
                                                    + "."));
        }));
    }
}
