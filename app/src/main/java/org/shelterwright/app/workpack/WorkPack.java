package org.shelterwright.app.workpack;

import java.util.List;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.tables.Table;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.order.Schedule;

/**
 * All parts of a work pack.
 *
 * @param pages on paper
 * @param labels to cut out
 * @param tablet one HTML file
 * @param lists pick list, fasteners, tools, cables to cut
 */
@SuppressWarnings("ArrayRecordComponent") // Work packs are never compared.
public record WorkPack(List<Drawing> pages, List<Drawing> labels, byte[] tablet, List<Table> lists) {
    /** Makes the work pack of a scene whose layout holds an order. */
    public static WorkPack of(PackHead head, Scene scene, BoltDownPlan plan, Typeface typeface) {
        Schedule schedule = Schedule.of(plan);
        PaperPack paper = new PaperPack(head, scene, plan, schedule, typeface);
        return new WorkPack(
                paper.pages(),
                paper.labels(),
                new TabletPack(head, scene, plan, schedule, typeface).bytes(),
                List.of(
                        PackLists.picks(plan),
                        PackLists.fasteners(plan),
                        PackLists.tools(plan),
                        PackLists.cables(scene, plan)));
    }
}
