package org.shelterwright.app.arrangement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
     * @param program program, version and seed
     */
    public record Told(Particulars particulars, @Nullable Point centre, List<String> notes, String program) {}

    /** The sheets. Cost: quadratic in the units. */
    public List<Drawing> sheets(Scene scene, Situation situation, Told told) {
        Map<String, Integer> numbers = UnitNumbers.of(scene);
        SheetPlan plan = SheetPlan.of(scene.body(), numbers.size());
        PartsList list = new PartsList(typeface, scene, situation, numbers);
        Notes notes = new Notes(typeface, told.notes(), LIST_WIDTH - GAP);
        Bounds space = plan.size().space();
        double listHeight = plan.listBeside() ? PartsList.height(numbers.size()) + GAP : 0;
        boolean notesBeside =
                plan.listBeside() && listHeight + notes.height() + GAP <= space.height() - TitleBlock.HEIGHT;
        boolean second = !plan.listBeside() || !notesBeside;

        List<Shape> first =
                new ArrayList<>(new Views(typeface, scene, situation, plan, numbers, told.centre()).shapes());
        Spot beside = new Spot(space.x1() - LIST_WIDTH, space.y0());
        if (plan.listBeside()) {
            first.add(new Group("parts list", list.shapes(beside, scene.brief().units())));
        }
        if (notesBeside) {
            first.add(new Group("notes", notes.shapes(beside.plus(0, listHeight))));
        }
        first.add(new Group("control bar", ControlBar.shapes(new Spot(space.x0() + GAP, space.y1() - 6))));
        List<Drawing> sheets = new ArrayList<>();
        sheets.add(sheet(scene, told, plan.size(), "1:" + plan.scale(), second ? "1 / 2" : "1 / 1", first));
        if (second) {
            List<Shape> shapes = new ArrayList<>();
            Spot corner =
                    new Spot(SheetSize.A3.space().x0(), SheetSize.A3.space().y0());
            double right = corner.x();
            if (!plan.listBeside()) {
                right = columns(list, scene.brief().units(), corner, shapes);
            }
            shapes.add(new Group("notes", notes.shapes(new Spot(right + GAP, corner.y() + GAP / 2))));
            sheets.add(sheet(scene, told, SheetSize.A3, "–", "2 / 2", shapes));
        }
        return sheets;
    }

    /** Sets a long parts list in columns; gives where the last one ends (mm). */
    private static double columns(PartsList list, List<UnitSpec> units, Spot corner, List<Shape> shapes) {
        double height = SheetSize.A3.space().height() - TitleBlock.HEIGHT - GAP;
        int most = (int) ((height - PartsList.height(0)) / (PartsList.height(1) - PartsList.height(0)));
        Spot at = corner;
        for (int from = 0; from < units.size(); from += most) {
            List<UnitSpec> some = units.subList(from, Math.min(units.size(), from + most));
            shapes.add(new Group("parts list", list.shapes(at, some)));
            at = at.plus(LIST_WIDTH + GAP, 0);
        }
        return at.x() - GAP;
    }

    private Drawing sheet(Scene scene, Told told, SheetSize size, String scale, String number, List<Shape> content) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Polygon.of(new Bounds(0, 0, size.width(), size.height()), Role.RAISED.colour(), null));
        shapes.addAll(content);
        shapes.add(new Group("frame", SheetFrame.shapes(size)));
        String title = scene.brief().name();
        TitleBlock.Fields fields = new TitleBlock.Fields(
                scene.brief().id() + "-ga",
                "General arrangement",
                title,
                scene.body().name() + ", on station",
                number,
                scale,
                size.name(),
                told.program());
        Spot corner = new Spot(size.space().x1(), size.space().y1());
        shapes.add(new Group("title block", new TitleBlock(typeface).shapes(corner, fields, told.particulars())));
        return new Drawing(title + ", general arrangement, sheet " + number, size.width(), size.height(), shapes);
    }
}
