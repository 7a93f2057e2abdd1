package org.shelterwright.app.workpack;

import java.util.List;

/** What is said before the first step and after the last, on paper and on the tablet alike. */
final class PackWords {
    static final List<String> BEFORE = List.of(
            "Work in the order of the steps: each unit has a way in past those before it, not past those after it.",
            "Rear, front, left and right are those of the body as one looks forward in it. Measure from the bare wall, and count holes"
                    + " and height units as the card says.",
            "Torques are for clean, dry threads. Tighten in two rounds in the order shown, and again crosswise if anything moved.",
            "A cable end that is left open is covered and marked. Nothing is powered before the hold point that allows it.",
            "Stop and ask when a measure is out of its tolerance, a hole is not where it should be, or a torque is not known.");

    static final List<String> AFTER = List.of(
            "Check round: go over all bolts once more at their second torque, in the order of the cards. Bolts relax each other (common"
                    + " practice).",
            "Stow the loose pieces by the stowage list and count them on.",
            "Hold before the first move: nothing loose, doors, lids and drawers locked; checked and signed by a second person.",
            "Weigh on all wheels, level and tilted, and hold readings and record against the layout.");

    private PackWords() {}
}
