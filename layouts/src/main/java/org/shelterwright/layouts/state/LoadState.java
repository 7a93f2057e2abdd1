package org.shelterwright.layouts.state;

import java.util.ArrayList;
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
        StringBuilder text = new StringBuilder(Wording.situation(mode.situation()));
        tanks(text);
        if (full.contains(Fill.CREW)) {
            text.append(", crew aboard");
        } else if (low.contains(Fill.CREW)) {
            text.append(", no crew");
        }
        if (tellsTrailer) {
            text.append(mode.trailer() ? ", trailer on" : ", trailer off");
        }
        return text.toString();
    }

    private void tanks(StringBuilder text) {
        List<String> fullTanks = names(full);
        List<String> lowTanks = names(low);
        int count = fullTanks.size() + lowTanks.size();
        if (count > 1 && lowTanks.isEmpty()) {
            text.append(", tanks full");
        } else if (count > 1 && fullTanks.isEmpty()) {
            text.append(", tanks low");
        } else if (count <= NAMED_TANKS || fullTanks.size() <= lowTanks.size()) {
            append(text, fullTanks, " full");
            append(text, count <= NAMED_TANKS ? lowTanks : others(lowTanks), " low");
        } else {
            append(text, lowTanks, " low");
            append(text, others(fullTanks), " full");
        }
    }

    private static List<String> others(List<String> tanks) {
        return tanks.size() > 1 ? List.of("other tanks") : tanks;
    }

    private static void append(StringBuilder text, List<String> tanks, String level) {
        for (String tank : tanks) {
            text.append(", ").append(tank).append(level);
        }
    }

    private static List<String> names(List<Fill> fills) {
        List<String> names = new ArrayList<>();
        for (Fill fill : fills) {
            if (!fill.crew()) {
                names.add(fill.name());
            }
        }
        return names;
    }
}
