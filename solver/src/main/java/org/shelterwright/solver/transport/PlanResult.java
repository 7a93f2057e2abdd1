package org.shelterwright.solver.transport;

import org.shelterwright.layouts.ledger.transport.JourneyLedger;
import org.shelterwright.layouts.transport.scene.JourneyScene;

/** A planned journey, resolved and checked from scratch. */
public record PlanResult(JourneyScene scene, JourneyLedger ledger) {}
