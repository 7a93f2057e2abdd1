package org.shelterwright.layouts.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.item.Fixing;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Support;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;

/**
 * Whether an item could land anywhere in a body at all. It answers no only where that is certain; that it answers yes
 * promises nothing.
 */
final class Landing {
    private Landing() {}

    /** Why the item can land nowhere, as a sentence; nothing if it may. */
    static Optional<String> fault(Item item, Body body, List<Item> others) {
        List<QuarterTurn> turns = item.turns().stream()
                .filter(turn -> fits(turn.apply(item.size()), body.inside()))
                .sorted()
                .toList();
        if (turns.isEmpty()) {
            return Optional.of("the item " + item.id() + " of " + shown(item.size())
                    + " mm is larger than the inside of"
                    + " body " + body.id() + ", " + shown(body.inside()) + " mm, at every turn that it allows. Take a"
                    + " smaller item or a larger body.");
        }
        List<String> reasons = new ArrayList<>();
        for (Surface surface : item.mounting().surfaces().stream().sorted().toList()) {
            Optional<String> reason = fault(surface, item, turns, body, others);
            if (reason.isEmpty()) {
                return Optional.empty();
            }
            reasons.add(surface.name().toLowerCase(Locale.ROOT).replace('_', ' ') + ": " + reason.get());
        }
        return Optional.of("the item " + item.id() + " finds nothing in body " + body.id() + " to land on ("
                + String.join("; ", reasons) + "). Take another item or body, or change how it is mounted.");
    }

    private static Optional<String> fault(
            Surface surface, Item item, List<QuarterTurn> turns, Body body, List<Item> others) {
        return switch (surface) {
            case ON_UNIT, UNDER_UNIT -> hosts(surface == Surface.UNDER_UNIT, item, body, others);
            case WALL -> {
                Integer lowest = item.mounting().lowestAbove();
                yield lowest != null
                                && lowest + (long) item.size().z()
                                        > body.inside().z()
                        ? Optional.of("it may hang no lower than " + Lengths.format(lowest)
                                + " mm and is then higher than the roof")
                        : fixings(item, turns, body);
            }
            case FLOOR, ROOF -> fixings(item, turns, body);
        };
    }

    private static Optional<String> hosts(boolean under, Item item, Body body, List<Item> others) {
        boolean self = others.stream().filter(other -> other == item).limit(2).count() > 1;
        boolean found = others.stream()
                .filter(other -> other != item || self)
                .anyMatch(other -> other.supports().stream()
                        .anyMatch(support -> support.under() == under && room(support, other, item, body)));
        return found ? Optional.empty() : Optional.of("no other unit has a support with room for it");
    }

    /** Whether the height fits when the host stands as low, or hangs as high, as the body lets it. */
    private static boolean room(Support support, Item host, Item item, Body body) {
        long roof = body.inside().z();
        return support.under()
                ? support.height() + roof - host.size().z() >= item.size().z()
                : support.height() + (long) item.size().z() <= roof;
    }

    private static Optional<String> fixings(Item item, List<QuarterTurn> turns, Body body) {
        if (item.mounting().loose() || item.fixings().isEmpty()) {
            return Optional.empty();
        }
        return turns.stream().anyMatch(turn -> item.fixings().stream().allMatch(fixing -> lands(fixing, turn, body)))
                ? Optional.empty()
                : Optional.of("no hard point takes its fixings " + threads(item));
    }

    private static boolean lands(Fixing fixing, QuarterTurn turn, Body body) {
        return body.hardPoints().stream()
                .anyMatch(point -> point.surface() == turn.apply(fixing.face())
                        && (point.threads().isEmpty() || point.threads().contains(fixing.thread())));
    }

    private static String threads(Item item) {
        return String.join(
                ", ",
                item.fixings().stream()
                        .map(fixing -> fixing.thread() + " at its "
                                + fixing.face().name().toLowerCase(Locale.ROOT))
                        .distinct()
                        .toList());
    }

    private static boolean fits(Size size, Size inside) {
        return size.x() <= inside.x() && size.y() <= inside.y() && size.z() <= inside.z();
    }

    private static String shown(Size size) {
        return Lengths.format(size.x()) + " × " + Lengths.format(size.y()) + " × " + Lengths.format(size.z());
    }
}
