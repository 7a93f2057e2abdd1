package org.shelterwright.app.desk.space;

import java.util.List;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.shelterwright.app.desk.menu.CommandList;
import org.shelterwright.app.desk.menu.Reach;
import org.shelterwright.app.desk.menu.ToolButton;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.mark.Overlay;
import org.shelterwright.app.desk.style.Icon;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.catalog.item.Situation;

/** What lies over a view of the body: tools, chips of the overlays, and the situation that is shown. */
public final class ViewTools {
    private static final List<String> LOOKING = List.of(
            "view.pictorial",
            "view.above",
            "view.rear",
            "view.front",
            "view.right",
            "view.left",
            CommandList.LINE,
            "view.whole",
            "view.to-selected",
            "view.projection",
            CommandList.LINE,
            "view.space",
            "view.plan",
            "view.both",
            "view.table",
            "view.wires");
    private static final List<String> CUTTING = List.of(
            "view.section-along",
            "view.section-across",
            "view.section-level",
            CommandList.LINE,
            "view.section-on",
            "view.section-back",
            "view.section-turn",
            "view.section-off");
    private static final List<String> MEASURING =
            List.of("view.measure", "view.measure-nearest", CommandList.LINE, "view.measure-clear");
    private static final List<String> SIGHT = List.of("view.isolate", "view.hide", "view.x-ray", "view.show-all");
    private static final List<String> SITUATIONS = List.of("show.station", "show.road");

    private final Session session;
    private final Showing showing;
    private final ToolButton cut = new ToolButton("Section plane", Icon.SECTION);
    private final ToolButton measure = new ToolButton("Measure", Icon.MEASURE);
    private final ToolButton sight = new ToolButton("Show and hide", Icon.SHOW_HIDE);
    private final Button situation = new Button();
    private final ToolRow row;

    public ViewTools(Session session, Showing showing, Reach reach, Theme theme) {
        this.session = session;
        this.showing = showing;
        ToolButton look = new ToolButton("Ways to look", Icon.PLACE);
        CommandList.under(look, reach, LOOKING);
        CommandList.under(cut, reach, CUTTING);
        CommandList.under(measure, reach, MEASURING);
        CommandList.under(sight, reach, SIGHT);
        CommandList.under(situation, reach, SITUATIONS);
        HBox tools = new HBox(look, cut, measure, sight);
        tools.getStyleClass().add("tools");
        tools.setAlignment(Pos.CENTER_LEFT);
        situation.getStyleClass().addAll("chip", "situation");
        ToolButton more = new ToolButton("More to lay over the view", Icon.OVERLAYS);
        CommandList.under(
                more, reach, Stream.of(Overlay.values()).map(SpaceCommands::id).toList());
        row = new ToolRow(List.of(tools, situation), new Chips(showing, theme).all(), more);
        showing.onChange(this::show);
        session.situation().addListener((observable, before, now) -> show());
        show();
    }

    public Region node() {
        return row;
    }

    private void show() {
        cut.mark(showing.section().get() != null);
        measure.mark(showing.measuring().get());
        sight.mark(!showing.sight().get().equals(Sight.ALL));
        boolean road = session.situation().get() == Situation.ON_THE_ROAD;
        situation.setText(road ? "On the road" : "On station");
        situation.setAccessibleText("Shown " + (road ? "on the road" : "on station") + ". Choose the other.");
        situation.getStyleClass().remove("road");
        if (road) {
            situation.getStyleClass().add("road");
        }
    }
}
