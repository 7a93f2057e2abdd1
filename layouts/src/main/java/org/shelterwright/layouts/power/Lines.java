package org.shelterwright.layouts.power;

/** Sums of power and apparent power on each line of a supply. */
final class Lines {
    private final double[] watts;
    private final double[] voltAmperes;

    Lines(int count) {
        watts = new double[count];
        voltAmperes = new double[count];
    }

    /** Adds to one line, or to all in equal parts. */
    void add(int line, double w, double va) {
        if (line == Draw.ALL_LINES) {
            for (int i = 0; i < watts.length; i++) {
                watts[i] += w / watts.length;
                voltAmperes[i] += va / watts.length;
            }
        } else {
            watts[line] += w;
            voltAmperes[line] += va;
        }
    }

    int count() {
        return watts.length;
    }

    double w(int line) {
        return watts[line];
    }

    double va(int line) {
        return voltAmperes[line];
    }
}
