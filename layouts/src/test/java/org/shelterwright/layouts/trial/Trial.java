package org.shelterwright.layouts.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.Inventory;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.brief.Services;
import org.shelterwright.layouts.brief.Task;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Contents;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.scene.Scene;

/** A layout under test: puts units into a body and asks one limit. Unit ids are lower case; names start upper case. */
public final class Trial {
    private final Body body;
    private final Map<String, Item> items = new LinkedHashMap<>();
    private final List<UnitSpec> units = new ArrayList<>();
    private final Map<String, Placement> placements = new LinkedHashMap<>();
    private final Map<String, Double> limits = new LinkedHashMap<>();
    private final List<RuleSet> ruleSets = new ArrayList<>();

    private @Nullable Services services;
    private final List<Task> tasks = new ArrayList<>();
    private final List<PieceSpec> pieces = new ArrayList<>();
    private final Map<String, Piece> kinds = new LinkedHashMap<>();
    private final Map<String, PiecePlace> stowed = new LinkedHashMap<>();

    private Trial(Body body) {
        this.body = body;
    }

    public static Trial in(TrialBody body) {
        return new Trial(body.build());
    }

    public Trial limit(Figure figure, double value) {
        limits.put(figure.id(), value);
        return this;
    }

    public Trial rules(RuleSet set) {
        ruleSets.add(set);
        return this;
    }

    /** Chooses a rule set that comes with the program. */
    public Trial rules(String builtIn) {
        return rules(RuleSets.builtIn().stream()
                .filter(set -> set.id().equals(builtIn))
                .findFirst()
                .orElseThrow());
    }

    public Trial services(Services asked) {
        services = asked;
        return this;
    }

    public Trial task(Task task) {
        tasks.add(task);
        return this;
    }

    /** Lists a piece; {@code null}: it has no place. */
    public Trial piece(PieceSpec spec, Piece kind, @Nullable PiecePlace place) {
        pieces.add(spec);
        kinds.put(kind.id(), kind);
        if (place != null) {
            stowed.put(spec.id(), place);
        }
        return this;
    }

    public Trial toPlace(String unit, TrialItem item) {
        Item built = item.build();
        items.put(built.id(), built);
        String name = Character.toUpperCase(unit.charAt(0)) + unit.substring(1);
        units.add(new UnitSpec(unit, name, built.id(), "trial"));
        return this;
    }

    public Trial put(String unit, TrialItem item, Place station, @Nullable Place road, Pin pin) {
        toPlace(unit, item);
        placements.put(unit, new Placement(unit, station, road, pin));
        return this;
    }

    public Trial put(String unit, TrialItem item, Place station) {
        return put(unit, item, station, null, Pin.NONE);
    }

    /** Stands on the floor; takes whole millimetres. */
    public Trial floor(String unit, TrialItem item, int x, int y) {
        return put(unit, item, onFloor(x, y, QuarterTurn.R0));
    }

    public static Place onFloor(int x, int y, QuarterTurn turn) {
        return Place.onFloor(new Pose(Point.ofMm(x, y, 0), turn));
    }

    public static Place at(Surface surface, int x, int y, int z, QuarterTurn turn) {
        return new Place(surface, null, new Pose(Point.ofMm(x, y, z), turn));
    }

    public static Place on(String host, int x, int y, int z) {
        return new Place(Surface.ON_UNIT, host, Pose.at(Point.ofMm(x, y, z)));
    }

    public static Place under(String host, int x, int y, int z) {
        return new Place(Surface.UNDER_UNIT, host, Pose.at(Point.ofMm(x, y, z)));
    }

    public Layout layout() {
        List<String> sets = ruleSets.stream().map(RuleSet::id).toList();
        Brief brief = Brief.named("trial", "Trial", body.id())
                .units(units)
                .ruleSets(sets)
                .limits(limits)
                .services(services)
                .inventory(pieces.isEmpty() ? null : new Inventory(tasks, pieces))
                .build();
        return Layout.empty(brief, new Parts(body, null, null, items))
                .withPlacements(placements)
                .withContents(new Contents(kinds, stowed));
    }

    public Scene scene() {
        Layout layout = layout();
        return Scene.of(layout, Rules.of(layout.brief(), ruleSets));
    }

    /** The rows of one limit, in the order of the ledger. */
    public List<Row> rows(Limit limit) {
        return LedgerBuilder.full(new LimitBook(List.of(limit)), scene()).rows();
    }
}
