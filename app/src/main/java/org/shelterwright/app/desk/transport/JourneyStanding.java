package org.shelterwright.app.desk.transport;

import org.shelterwright.layouts.edit.History;
import org.shelterwright.layouts.ledger.transport.JourneyLedger;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.scene.JourneyScene;

/**
 * How a journey stands at one moment; everything that the page shows comes from one of these. Immutable.
 *
 * @param history the journey with its changes
 * @param scene the journey that is shown, resolved: that of the history, or one that is being tried out
 * @param ledger every limit of the scene, leg by leg
 * @param tryingOut whether the scene shows something that is not in the history, such as a piece being dragged
 */
public record JourneyStanding(
        History<JourneyWork> history, JourneyScene scene, JourneyLedger ledger, boolean tryingOut) {
    /** The journey that is shown. */
    public Journey journey() {
        return scene.journey();
    }
}
