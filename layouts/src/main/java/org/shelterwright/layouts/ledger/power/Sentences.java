package org.shelterwright.layouts.ledger.power;

import org.shelterwright.layouts.ledger.mend.Amounts;

/** The findings of power. */
final class Sentences {
    private Sentences() {}

    /** Such as "Mains bears 20 A of 32 A: 12 A are left." */
    static String of(String what, double demand, double capacity, String unit, int decimals) {
        double left = capacity - demand;
        return what + " " + amount(demand, unit, decimals) + " of " + amount(capacity, unit, decimals) + ": "
                + amount(Math.abs(left), unit, decimals) + (left < 0 ? " too much." : " are left.");
    }

    /** A number with its unit; shares as percentages. */
    static String amount(double value, String unit, int decimals) {
        return unit.equals("share") ? Amounts.percent(value) : Amounts.number(value, decimals) + " " + unit;
    }
}
