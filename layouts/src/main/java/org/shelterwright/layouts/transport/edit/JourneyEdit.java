package org.shelterwright.layouts.transport.edit;

import org.shelterwright.layouts.edit.Change;
import org.shelterwright.layouts.transport.Journey;

/** One change that a person makes to a journey. */
public sealed interface JourneyEdit extends Change<Journey>
        permits AcceptLegRow,
                AddBlock,
                AddLashing,
                ChangeCar,
                LetGo,
                PinStand,
                PutStand,
                SetMethod,
                TakeLashing,
                TakeOff,
                WithdrawLegAcceptance {}
