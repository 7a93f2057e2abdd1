package org.shelterwright.solver.inside.pack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Stowage;
import org.shelterwright.catalog.piece.DangerousGoods;
import org.shelterwright.catalog.piece.Loose;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.piece.Urgency;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.brief.Task;
import org.shelterwright.layouts.ledger.stowage.Ways;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** How well a place suits a piece. It only orders what is tried; the limits judge what comes of it. */
final class Suiting {
    static final double NEVER = 1e15;

    private static final double OTHER_SIDE = 1e6;
    private static final double OUT_OF_REACH = 1e7;
    private static final double NO_LOCK = 1e8;
    private static final double HEIGHT_WEIGHT = 0.1;

    private static final double OUT_OF_ORDER = 1e5;

    /** From this cost on, a place would break a limit. */
    static final double LEAST_FAULT = OUT_OF_ORDER;

    /** Pieces lie off the middle of their place, so that not all of the slack is used. */
    private static final double ORDER_SHARE = 0.6;

    private record Used(int order, double mm) {}

    private final Map<String, List<Used>> used = new LinkedHashMap<>();
    private final Scene scene;
    private final Ways ways;
    private final Map<String, List<DangerousGoods>> goods = new LinkedHashMap<>();

    Suiting(Scene scene) {
        this.scene = scene;
        this.ways = new Ways(scene);
    }

    static Urgency urgency(PieceSpec spec, Loose loose) {
        Urgency asked = spec.urgency();
        return asked == null ? loose.urgency() : asked;
    }

    /** Lower suits better; {@link #NEVER} if it must not go there. */
    double cost(PieceSpec spec, Piece piece, Loose loose, PlacedUnit unit, Stowage stowage) {
        String within = spec.within();
        boolean named = within != null && within.equals(unit.id());
        boolean weighed = unit.item().interior() != null && unit.item().interior().empty() != null;
        if (within != null && !named || !named && !weighed || !bears(loose, stowage)) {
            return NEVER;
        }
        double cost = stowage.lock() == null ? NO_LOCK : 0;
        Box box = unit.pose(Situation.ON_STATION).apply(stowage.inside(), unit.item().size());
        Double kg = piece.mass().massKg();
        cost += HEIGHT_WEIGHT * box.z0() / Lengths.MM * (kg == null ? 0 : kg) / 10;
        Optional<Task> task = ways.task(spec);
        if (task.isPresent()) {
            Optional<Point> spot = ways.spot(task.get());
            double mm = spot.isPresent() ? Ways.mm(unit, stowage.inside(), spot.get()) : 0;
            double half = (stowage.inside().x1() - stowage.inside().x0() + stowage.inside().y1() - stowage.inside().y0())
                    / 4.0
                    / Lengths.MM;
            cost += mm;
            Figure bound = switch (urgency(spec, loose)) {
                case AT_ONCE -> Figure.STOWAGE_REACH_AT_ONCE;
                case SOON -> Figure.STOWAGE_REACH_SOON;
                case LATER -> null;
            };
            if (bound != null && mm + half > scene.rules().valueOr(bound, NEVER)) {
                cost += OUT_OF_REACH;
            }
            cost += onSide(task.get(), box) ? 0 : OTHER_SIDE;
        }
        return cost;
    }

    /** What it costs that a place would let something be used before what lies nearer, or after what lies farther. */
    double orderCost(PieceSpec spec, PlacedUnit unit, Stowage stowage) {
        Integer order = spec.order();
        OptionalDouble mm = order == null ? OptionalDouble.empty() : mm(spec, unit, stowage);
        if (order == null || mm.isEmpty()) {
            return 0;
        }
        double slack = ORDER_SHARE * scene.rules().valueOr(Figure.STOWAGE_ORDER_SLACK, NEVER);
        double worst = 0;
        for (Used other : used.getOrDefault(String.valueOf(spec.task()), List.of())) {
            double by = other.order() < order ? other.mm() - mm.getAsDouble() : mm.getAsDouble() - other.mm();
            worst = other.order() == order ? worst : Math.max(worst, by - slack);
        }
        return worst > 0 ? OUT_OF_ORDER + worst : 0;
    }

    private OptionalDouble mm(PieceSpec spec, PlacedUnit unit, Stowage stowage) {
        Optional<Point> spot = ways.task(spec).flatMap(ways::spot);
        return spot.isPresent()
                ? OptionalDouble.of(Ways.mm(unit, stowage.inside(), spot.get()))
                : OptionalDouble.empty();
    }

    private boolean onSide(Task task, Box box) {
        int middle = scene.body().inside().y() / 2;
        int y = box.centre().y();
        return task.side() == null || (task.side() == Face.LEFT ? y >= middle : y <= middle);
    }

    private boolean bears(Loose loose, Stowage stowage) {
        Double ownLeast = stowage.leastC();
        Double ownMost = stowage.mostC();
        double least = ownLeast == null ? scene.rules().valueOr(Figure.STOWAGE_ROOM_LOW, -NEVER) : ownLeast;
        double most = ownMost == null ? scene.rules().valueOr(Figure.STOWAGE_ROOM_HIGH, NEVER) : ownMost;
        Double cold = loose.leastC();
        Double warm = loose.mostC();
        boolean tender = cold != null || warm != null;
        boolean room = ownLeast == null && ownMost == null;
        return (cold == null || least >= cold) && (warm == null || most <= warm) && (room || tender);
    }

    boolean goodsMay(PlacedUnit unit, Loose loose) {
        DangerousGoods own = loose.goods();
        return own == null
                || goods.getOrDefault(unit.id(), List.of()).stream().noneMatch(own::apart);
    }

    void took(PieceSpec spec, Loose loose, PlacedUnit unit, Stowage stowage) {
        Integer order = spec.order();
        OptionalDouble mm = order == null ? OptionalDouble.empty() : mm(spec, unit, stowage);
        if (order != null && mm.isPresent()) {
            used.computeIfAbsent(String.valueOf(spec.task()), key -> new ArrayList<>())
                    .add(new Used(order, mm.getAsDouble()));
        }
        DangerousGoods own = loose.goods();
        if (own != null) {
            goods.computeIfAbsent(unit.id(), key -> new ArrayList<>()).add(own);
        }
    }
}
