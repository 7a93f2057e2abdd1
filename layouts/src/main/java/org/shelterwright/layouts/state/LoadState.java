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
    private static final int NAMED = 3;

    public LoadState {
        full = List.copyOf(full);
        low = List.copyOf(low);
    }

    /** The state in words, such as "on the road, fuel tank full, crew aboard, trailer on". */
    public String text() {
        StringBuilder text = new StringBuilder(80).append(Wording.situation(mode.situation()));
        tanks(text, of(full, Fill.Kind.TANK), of(low, Fill.Kind.TANK));
        boolean aboard = full.contains(Fill.CREW);
        if (aboard || low.contains(Fill.CREW)) {
            text.append(aboard ? ", crew aboard" : ", no crew");
        }
        people(text, of(full, Fill.Kind.OCCUPANT), of(low, Fill.Kind.OCCUPANT));
        if (tellsTrailer) {
            text.append(mode.trailer() ? ", trailer on" : ", trailer off");
        }
        return text.toString();
    }

    private static List<Fill> of(List<Fill> fills, Fill.Kind kind) {
        return fills.stream().filter(fill -> fill.kind() == kind).toList();
    }

    private static void people(StringBuilder text, List<Fill> there, List<Fill> away) {
        if (there.isEmpty() && away.isEmpty()) {
            return;
        }
        if (there.isEmpty()) {
            text.append(", nobody inside");
        } else if (away.isEmpty()) {
            text.append(", everybody inside");
        } else if (there.size() > NAMED) {
            text.append(", ").append(there.size()).append(" of ").append(there.size() + away.size());
            text.append(" people inside");
        } else {
            text.append(there.size() == 1 ? ", person at " : ", people at ");
            text.append(Wording.list(there.stream().map(Fill::name).toList()));
        }
    }

    private static void tanks(StringBuilder text, List<Fill> full, List<Fill> low) {
        int count = full.size() + low.size();
        if (count > 1 && low.isEmpty()) {
            text.append(", tanks full");
        } else if (count > 1 && full.isEmpty()) {
            text.append(", tanks low");
        } else if (count <= NAMED) {
            append(text, full, " full");
            append(text, low, " low");
        } else if (full.size() <= low.size()) {
            few(text, full, " full");
            text.append(", other tanks low");
        } else {
            few(text, low, " low");
            text.append(", other tanks full");
        }
    }

    /** Names the few; where even they are many, only how many. */
    private static void few(StringBuilder text, List<Fill> fills, String level) {
        if (fills.size() <= NAMED) {
            append(text, fills, level);
        } else {
            text.append(", ").append(fills.size()).append(" tanks").append(level);
        }
    }

    private static void append(StringBuilder text, List<Fill> fills, String level) {
        for (Fill fill : fills) {
            text.append(", ").append(fill.name()).append(level);
        }
    }
}
