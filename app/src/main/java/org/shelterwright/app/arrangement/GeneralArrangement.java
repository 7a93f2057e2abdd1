package org.shelterwright.app.arrangement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Group;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.sheet.Particulars;
import org.shelterwright.app.sheet.SheetFrame;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.sheet.TitleBlock;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.view.UnitNumbers;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.scene.Scene;

/**
 * The general arrangement drawing of a layout, at true scale, after the ISO conventions for technical drawings: plan,
 * both sides, rear and a section, with datum dimensions, item references and a parts list.
 */
public final class GeneralArrangement {

    private static final double GAP = 8;
    private static final int COLUMNS = 2;
    private static final double LIST_WIDTH = PartsList.WIDTH;

    private final Typeface typeface;

    public GeneralArrangement(Typeface typeface) {
        this.typeface = typeface;
    }

    /**
     * What is told besides the scene.
     *
     * @param centre centre of mass (in the frame of the body); {@code null} if it is not known
     * @param notes sentences for the notes of the drawing
     * @param road what is told of the road; {@code null} if everything stands there as on station
     * @param program program, version and seed
     */
    public record Told(
            Particulars particulars,
            @Nullable Point centre,
            List<String> notes,
            @Nullable Road road,
            String program) {}

    /**
     * What is told besides the scene on the sheet that shows the road.
     *
     * @param centre centre of mass on the road (in the frame of the body); {@code null} if it is not known
     */
    public record Road(@Nullable Point centre, List<String> notes) {}

    /**
     * The sheets: all views in a situation, what has no room there, and all views on the road, if that is told. Cost: quadratic
     * in the units.
     */
    public List<Drawing> sheets(Scene scene, Situation situation, Told told) {
        Map<String, Integer> numbers = UnitNumbers.of(scene);
        SheetPlan plan = SheetPlan.of(scene.body(), numbers.size());
        PartsList list = new PartsList(typeface, scene, situation, numbers);
        Notes notes = new Notes(typeface, told.notes(), LIST_WIDTH - GAP);
        Bounds space = plan.size().space();
        double listHeight = plan.listBeside() ? PartsList.height(numbers.size()) + GAP : 0;
        boolean notesBeside =
                plan.listBeside() && listHeight + notes.height() + GAP <= space.height() - TitleBlock.HEIGHT;
        List<List<Shape>> further = further(
                plan.listBeside(), notesBeside, list, notes, scene.brief().units());

        List<Shape> first =
                new ArrayList<>(new Views(typeface, scene, situation, plan, numbers, told.centre()).shapes());
        Spot beside = new Spot(space.x1() - LIST_WIDTH - SheetPlan.LIST_INSET, space.y0());
        if (plan.listBeside()) {
            first.add(new Group("parts list", list.shapes(beside, scene.brief().units())));
        }
        if (notesBeside) {
            first.add(new Group("notes", notes.shapes(beside.plus(0, listHeight))));
        }
        double taken = space.y0() + (notesBeside ? listHeight + notes.height() : listHeight);
        PictorialView.shape(scene, situation, plan, taken).ifPresent(first::add);
        first.add(new Group(
                "control bar",
                ControlBar.shapes(new Spot(space.x1() - TitleBlock.WIDTH, space.y1() - TitleBlock.HEIGHT - 6))));
        Road road = told.road();
        int count = 1 + further.size() + (road == null ? 0 : 1);
        List<Drawing> sheets = new ArrayList<>();
        String scale = "1:" + plan.scale();
        sheets.add(sheet(scene, situation, told, plan.size(), scale, "1 / " + count, first));
        for (List<Shape> shapes : further) {
            sheets.add(sheet(scene, situation, told, SheetSize.A3, "–", sheets.size() + 1 + " / " + count, shapes));
        }
        if (road != null) {
            List<Shape> shapes = road(scene, plan, numbers, road);
            sheets.add(sheet(scene, Situation.ON_THE_ROAD, told, plan.size(), scale, count + " / " + count, shapes));
        }
        return sheets;
    }

    private List<Shape> road(Scene scene, SheetPlan plan, Map<String, Integer> numbers, Road road) {
        Situation situation = Situation.ON_THE_ROAD;
        List<Shape> shapes =
                new ArrayList<>(new Views(typeface, scene, situation, plan, numbers, road.centre()).shapes());
        Notes notes = new Notes(typeface, road.notes(), LIST_WIDTH - GAP);
        Bounds space = plan.size().space();
        double x = plan.listBeside() ? space.x1() - LIST_WIDTH - SheetPlan.LIST_INSET : space.x1() - TitleBlock.WIDTH;
        double y = plan.listBeside() ? space.y0() + GAP : space.y1() - TitleBlock.HEIGHT - notes.height() - 3 * GAP;
        shapes.add(new Group("notes", notes.shapes(new Spot(x, y))));
        double taken = plan.listBeside() ? y + notes.height() : space.y0();
        PictorialView.shape(scene, situation, plan, taken).ifPresent(shapes::add);
        shapes.add(new Group(
                "control bar",
                ControlBar.shapes(new Spot(space.x1() - TitleBlock.WIDTH, space.y1() - TitleBlock.HEIGHT - 6))));
        return shapes;
    }

    /** What the first sheet has no room for, in columns on further sheets. */
    private static List<List<Shape>> further(
            boolean listBeside, boolean notesBeside, PartsList list, Notes notes, List<UnitSpec> units) {
        Bounds space = SheetSize.A3.space();
        List<Function<Spot, Shape>> columns = new ArrayList<>();
        if (!listBeside) {
            double height = space.height() - TitleBlock.HEIGHT - 2 * GAP;
            int most = (int) ((height - PartsList.height(0)) / (PartsList.height(1) - PartsList.height(0)));
            for (int from = 0; from < units.size(); from += most) {
                List<UnitSpec> some = units.subList(from, Math.min(units.size(), from + most));
                columns.add(corner -> new Group("parts list", list.shapes(corner, some)));
            }
        }
        if (!notesBeside) {
            columns.add(corner -> new Group("notes", notes.shapes(corner.plus(0, GAP / 2))));
        }
        List<List<Shape>> sheets = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            if (i % COLUMNS == 0) {
                sheets.add(new ArrayList<>());
            }
            Spot corner = new Spot(space.x0() + GAP + i % COLUMNS * (LIST_WIDTH + GAP), space.y0() + GAP);
            sheets.get(sheets.size() - 1).add(columns.get(i).apply(corner));
        }
        return sheets;
    }

    private Drawing sheet(
            Scene scene,
            Situation situation,
            Told told,
            SheetSize size,
            String scale,
            String number,
            List<Shape> content) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Polygon.of(new Bounds(0, 0, size.width(), size.height()), Role.RAISED.colour(), null));
        shapes.addAll(content);
        shapes.add(new Group("frame", SheetFrame.shapes(size)));
        String title = scene.brief().name();
        TitleBlock.Fields fields = new TitleBlock.Fields(
                scene.brief().id() + "-ga",
                "General arrangement",
                title,
                scene.body().name() + (situation == Situation.ON_STATION ? ", on station" : ", on the road"),
                number,
                scale,
                size.name(),
                told.program());
        Spot corner = new Spot(size.space().x1(), size.space().y1());
        shapes.add(new Group("title block", new TitleBlock(typeface).shapes(corner, fields, told.particulars())));
        return new Drawing(title + ", general arrangement, sheet " + number, size.width(), size.height(), shapes);
    }
}
