package org.shelterwright.layouts.ledger.cables;

import java.util.List;
import java.util.stream.Stream;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.cable.WireEnd;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Separation;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.PlacedPort;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * No other unit stands where the plug of a wire goes: max over the ports that wires end at of the depth = 0, on station. One row for
 * each owner and intruder. A wall may be there: units have their ports behind a step for that. Figures: {@link Figure#PLUG_DEPTH},
 * {@link Figure#PLUG_WIDTH}.
 *
 * <p>Source: common practice.
 */
final class PlugsFree extends NamedLimit implements Limit.OfPair {
    PlugsFree() {
        super(
                "cables.plug-free",
                Subject.CABLES,
                "Room for plugs",
                Severity.MEDIUM,
                Source.commonPractice("a plug needs room before its port, by the rule set"),
                "No unit stands before a port that a wire ends at.");
    }

    @Override
    public void assess(Scene scene, PlacedUnit a, PlacedUnit b, Rows rows) {
        assessOne(scene, a, b, rows);
        assessOne(scene, b, a, rows);
    }

    @Override
    public void assessNone(Scene scene, Rows rows) {
        for (Figure figure : List.of(Figure.PLUG_DEPTH, Figure.PLUG_WIDTH)) {
            if (scene.rules().value(figure).isEmpty() && wiresEndAtUnits(scene)) {
                rows.add(UnsetFigure.row(rows, this, figure));
                return;
            }
        }
    }

    private static boolean wiresEndAtUnits(Scene scene) {
        return scene.brief().wires().stream()
                .flatMap(wire -> Stream.of(wire.from(), wire.to()))
                .anyMatch(end -> scene.unit(WireEnd.owner(end)).isPresent());
    }

    private void assessOne(Scene scene, PlacedUnit owner, PlacedUnit intruder, Rows rows) {
        int worst = 0;
        PlacedPort worstPort = null;
        Box worstSolid = null;
        for (PlacedPort port : owner.wiredPorts()) {
            for (Box solid : intruder.solids(Situation.ON_STATION)) {
                int depth = port.plugRoom().depth(solid);
                if (depth > worst) {
                    worst = depth;
                    worstPort = port;
                    worstSolid = solid;
                }
            }
        }
        if (worstPort == null || worstSolid == null) {
            return;
        }
        String mend = Separation.least(scene, intruder, Situation.ON_STATION, List.of(worstPort.plugRoom()))
                .map(shift -> "Move " + intruder.name() + " at least " + shift.words() + ".")
                .orElse("Find another place for " + intruder.name() + " or " + owner.name() + ".");
        rows.add(rows.draft(this)
                .units(owner, intruder)
                .place(worstPort.plugRoom().intersection(worstSolid))
                .state(Wording.situation(Situation.ON_STATION))
                .mend(mend)
                .atMost(
                        worst / 1e3,
                        0,
                        "mm",
                        intruder.name() + " stands " + Wording.mm(worst) + " into the room for the plug of port \""
                                + worstPort.port().name() + "\" of " + owner.name() + "."));
    }
}
