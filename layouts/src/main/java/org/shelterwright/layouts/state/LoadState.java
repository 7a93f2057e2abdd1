package org.shelterwright.layouts.state;

import java.util.List;
import org.shelterwright.layouts.ledger.mend.Wording;

/**
 * One load state, as far as it matters to a quantity.
 *
 * @param tellsTrailer whether there is a trailer, so that the state must say if it is coupled
 * @param full the fills that are full, or aboard
 * @param low the fills that are at their least, or not aboard
 */
public record LoadState(Mode mode, boolean tellsTrailer, List<Fill> full, List<Fill> low) {
    private static final int NAMED_TANKS = 3;

    public LoadState {
        full = List.copyOf(full);
        low = List.copyOf(low);
    }

    /** The state in words, such as "on the road, fuel tank full, crew aboard, trailer on". */
    public String text() {
        StringBuilder text = new StringBuilder(80).append(Wording.situation(mode.situation()));
        boolean aboard = full.contains(Fill.CREW);
        boolean empty = low.contains(Fill.CREW);
        tanks(text, full.size() - (aboard ? 1 : 0), low.size() - (empty ? 1 : 0));
        if (aboard || empty) {
            text.append(aboard ? ", crew aboard" : ", no crew");
        }
        if (tellsTrailer) {
            text.append(mode.trailer() ? ", trailer on" : ", trailer off");
        }
        return text.toString();
    }

    private void tanks(StringBuilder text, int fullCount, int lowCount) {
        int count = fullCount + lowCount;
        if (count > 1 && lowCount == 0) {
            text.append(", tanks full");
        } else if (count > 1 && fullCount == 0) {
            text.append(", tanks low");
        } else if (count <= NAMED_TANKS) {
            append(text, full, " full");
            append(text, low, " low");
        } else if (fullCount <= lowCount) {
            few(text, full, fullCount, " full");
            text.append(", other tanks low");
        } else {
            few(text, low, lowCount, " low");
            text.append(", other tanks full");
        }
    }

    /** Names the few; where even they are many, only how many. */
    private static void few(StringBuilder text, List<Fill> fills, int count, String level) {
        if (count <= NAMED_TANKS) {
            append(text, fills, level);
        } else {
            text.append(", ").append(count).append(" tanks").append(level);
        }
    }

    private static void append(StringBuilder text, List<Fill> fills, String level) {
        for (Fill fill : fills) {
            if (!fill.crew()) {
                text.append(", ").append(fill.name()).append(level);
            }
        }
    }
}
