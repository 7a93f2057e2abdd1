package org.shelterwright.layouts.transport.edit;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.Stand;

/**
 * Puts a piece or a container at a place on a car. From another car of the same leg it comes off, with what held it there; on legs that
 * this car does not go, it stays where it is.
 *
 * @param load id of the load
 * @param what id of the piece or load that stands on it
 * @param pose in the frame of the car
 */
public record PutStand(String load, String what, Pose pose) implements JourneyEdit {
    @Override
    public String name() {
        return "Put " + what + " on " + load;
    }

    @Override
    public Journey apply(Journey journey) {
        Load target = Loads.named(journey, load);
        if (what.equals(load)) {
            throw new IllegalArgumentException(target.name() + " cannot stand on itself.");
        }
        if (journey.piece(what).isEmpty() && journey.load(what).isEmpty()) {
            throw new IllegalArgumentException("There is no piece or load \"" + what + "\" in this journey.");
        }
        if (target.stand(what).isPresent()) {
            return journey.with(target.withStands(target.stands().stream()
                    .map(one -> one.what().equals(what) ? one.with(pose) : one)
                    .toList()));
        }
        List<Stand> stands = new ArrayList<>(target.stands());
        stands.add(new Stand(what, pose, false));
        Journey left = journey;
        for (Load other : journey.loads()) {
            if (other.stand(what).isPresent() && Loads.together(journey, load, other.id())) {
                left = left.with(Loads.without(other, what));
            }
        }
        return left.with(target.withStands(stands));
    }
}
