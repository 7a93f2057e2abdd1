package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.solver.route.cut.Cutting;
import org.shelterwright.solver.route.cut.Cutting.Piece;

/** The cut list of a layout: what is cut from which drum, by kind of cable in the order of first use. */
final class CutLists {
    private CutLists() {}

    /**
     * One kind of cable.
     *
     * @param drum length on a drum (µm); the length of all if its data state none
     */
    record CutList(Cable cable, long drum, boolean stated, Cutting cutting) {
        long length() {
            long all = cutting.drums().stream().mapToLong(Cutting::sum).sum();
            return all + Cutting.sum(cutting.tooLong());
        }
    }

    static List<CutList> of(CableNet net) {
        Map<String, List<Piece>> pieces = new LinkedHashMap<>();
        Map<String, Cable> cables = new LinkedHashMap<>();
        for (LaidWire wire : net.wires()) {
            Cable cable = wire.cable();
            if (cable != null && wire.cutLength() >= 0) {
                cables.put(cable.id(), cable);
                pieces.computeIfAbsent(cable.id(), key -> new ArrayList<>())
                        .add(new Piece(wire.wire().id(), wire.cutLength()));
            }
        }
        List<CutList> lists = new ArrayList<>();
        pieces.forEach((id, list) -> {
            Cable cable = cables.get(id);
            if (cable != null) {
                Integer drum = cable.drum();
                long length = drum == null ? Math.max(1, Cutting.sum(list)) : drum;
                lists.add(new CutList(cable, length, drum != null, Cutting.of(list, length)));
            }
        });
        return lists;
    }
}
