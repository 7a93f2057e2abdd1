package org.shelterwright.app.desk.transport;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.session.Finding;
import org.shelterwright.layouts.transport.scene.JourneyScene;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/**
 * What of a journey is looked at. Never part of the journey or its history. Immutable.
 *
 * @param leg number of the leg, from 1
 * @param load id of the load that is shown; {@code null} if the leg has none
 * @param pieces ids of what is selected, on a car or not, the leading one last
 * @param finding row of the leg's ledger that is looked at; {@code null} if none
 */
public record Focus(
        int leg,
        @Nullable String load,
        Set<String> pieces,
        @Nullable Finding finding) {
    public Focus {
        pieces = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(pieces));
    }

    /** The first leg on which something rides on a car, and its first load; else the first leg. */
    static Focus first(JourneyScene scene) {
        int number = scene.legs().stream()
                .filter(leg -> leg.loads().size() > 1)
                .findFirst()
                .or(() -> scene.legs().stream()
                        .filter(leg -> !leg.loads().isEmpty())
                        .findFirst())
                .map(LegScene::number)
                .orElse(1);
        return new Focus(number, null, Set.of(), null).fitted(scene);
    }

    /** The same on another leg, with its first load unless the present one goes there too. */
    Focus onLeg(int number, JourneyScene scene) {
        return new Focus(number, load, pieces, null).fitted(scene);
    }

    /** The same with another load, on the first leg that it goes on unless it goes on the present one. */
    Focus onLoad(String id, JourneyScene scene) {
        int number = goes(leg, id, scene)
                ? leg
                : scene.legs().stream()
                        .map(LegScene::number)
                        .filter(other -> goes(other, id, scene))
                        .findFirst()
                        .orElse(leg);
        return new Focus(number, id, pieces, number == leg ? finding : null).fitted(scene);
    }

    /** The same with other pieces selected. */
    public Focus onPieces(Set<String> chosen) {
        return new Focus(leg, load, chosen, finding);
    }

    Focus onFinding(@Nullable Finding row) {
        return new Focus(leg, load, pieces, row);
    }

    /** The piece that was chosen last. */
    Optional<String> leader() {
        return pieces.stream().reduce((a, b) -> b);
    }

    /** The same, without what the journey has no more. */
    Focus fitted(JourneyScene scene) {
        int number = Math.max(1, Math.min(leg, Math.max(1, scene.legs().size())));
        String shown = load != null && goes(number, load, scene)
                ? load
                : leg(number, scene).stream()
                        .flatMap(one -> one.loads().stream())
                        .map(PlacedLoad::id)
                        .findFirst()
                        .orElse(null);
        Set<String> known = pieces.stream()
                .filter(id -> scene.shape(id).isPresent() || scene.load(id).isPresent())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        return new Focus(number, shown, known, finding);
    }

    private static boolean goes(int number, String id, JourneyScene scene) {
        return leg(number, scene).stream()
                .flatMap(one -> one.loads().stream())
                .anyMatch(one -> one.id().equals(id));
    }

    static Optional<LegScene> leg(int number, JourneyScene scene) {
        return number < 1 || number > scene.legs().size()
                ? Optional.empty()
                : Optional.of(scene.legs().get(number - 1));
    }
}
