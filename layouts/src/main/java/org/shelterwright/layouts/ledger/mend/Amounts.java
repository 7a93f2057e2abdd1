package org.shelterwright.layouts.ledger.mend;

/** Writes rounded amounts in findings. Cheap, since live ledgers write many. */
public final class Amounts {
    private static final long[] POWERS = {1, 10, 100, 1000, 10_000};

    private Amounts() {}

    /** A mass with its unit: whole kilograms from 100 kg on, tenths below. */
    public static String kg(double kg) {
        return number(kg, Math.abs(kg) < 99.95 ? 1 : 0) + " kg";
    }

    /** A length given in metres, in whole millimetres with its unit. */
    public static String mm(double metres) {
        return number(1000 * metres, 0) + " mm";
    }

    /** A share as a percentage with one decimal. */
    public static String percent(double share) {
        return number(100 * share, 1) + " %";
    }

    /**
     * A number rounded half up, without needless zeros.
     *
     * @param decimals 0 to 4
     */
    public static String number(double value, int decimals) {
        long scaled = Math.round(Math.abs(value) * POWERS[decimals]);
        long whole = scaled / POWERS[decimals];
        long part = scaled % POWERS[decimals];
        StringBuilder text = new StringBuilder(16);
        if (value < 0 && scaled != 0) {
            text.append('-');
        }
        text.append(whole);
        if (part != 0) {
            text.append('.');
            for (int digit = decimals - 1; digit >= 0 && part != 0; digit--) {
                text.append(part / POWERS[digit]);
                part %= POWERS[digit];
            }
        }
        return text.toString();
    }
}
