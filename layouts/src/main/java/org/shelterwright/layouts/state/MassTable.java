package org.shelterwright.layouts.state;

import java.util.Arrays;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;

/**
 * The masses of one holder in one situation, as arrays: each with its range (kg), its centre (m) and the range of the
 * centre on each axis (m). Masses that a load state sets come with the number of their fill; others have -1.
 */
final class MassTable {
    private int count;
    private double[] least = new double[64];
    private double[] nominal = new double[64];
    private double[] most = new double[64];
    private double[] x = new double[64];
    private double[] y = new double[64];
    private double[] z = new double[64];
    private double[] off = new double[64];
    private int[] fill = new int[64];
    private double leastSum;
    private double mostSum;
    private double sum;
    private double sumX;
    private double sumY;
    private double sumZ;
    private double sumXy;
    private final double[] lowest = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    private final double[] highest = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};

    /** Adds a mass that is there in every load state. */
    void addFixed(double massKg, double uncertaintyKg, double x, double y, double z, double off) {
        add(Math.max(0, massKg - uncertaintyKg), massKg, massKg + uncertaintyKg, x, y, z, off, -1);
    }

    void addFixed(double massKg, double uncertaintyKg, Point centre, int offUm) {
        addFixed(
                massKg,
                uncertaintyKg,
                Lengths.metres(centre.x()),
                Lengths.metres(centre.y()),
                Lengths.metres(centre.z()),
                Lengths.metres(offUm));
    }

    /** Adds a mass that a load state sets between two values. */
    void addFill(int number, double leastKg, double fullKg, Point centre) {
        add(
                leastKg,
                fullKg,
                fullKg,
                Lengths.metres(centre.x()),
                Lengths.metres(centre.y()),
                Lengths.metres(centre.z()),
                0,
                number);
    }

    private void add(
            double leastKg,
            double nominalKg,
            double mostKg,
            double px,
            double py,
            double pz,
            double range,
            int number) {
        if (count == least.length) {
            grow();
        }
        least[count] = leastKg;
        nominal[count] = nominalKg;
        most[count] = mostKg;
        x[count] = px;
        y[count] = py;
        z[count] = pz;
        off[count] = range;
        fill[count] = number;
        count++;
        leastSum += leastKg;
        mostSum += mostKg;
        sum += nominalKg;
        sumX += nominalKg * px;
        sumY += nominalKg * py;
        sumZ += nominalKg * pz;
        sumXy += nominalKg * px * py;
        reach(0, px, range);
        reach(1, py, range);
        reach(2, pz, range);
    }

    private void reach(int axis, double place, double range) {
        lowest[axis] = Math.min(lowest[axis], place - range);
        highest[axis] = Math.max(highest[axis], place + range);
    }

    /** What an influence comes to with nominal masses, fills full. */
    double nominal(Influence of) {
        return of.constant() * sum + of.perX() * sumX + of.perY() * sumY + of.perZ() * sumZ + of.perXy() * sumXy;
    }

    /** A quantity of this influence is never below this: its least value in the hull of all places times all mass. */
    double lowerBound(Influence of) {
        if (count == 0) {
            return 0;
        }
        double least = Double.MAX_VALUE;
        for (int corner = 0; corner < 8; corner++) {
            least = Math.min(least, of.at(end(corner & 1, 0), end(corner & 2, 1), end(corner & 4, 2)));
        }
        return least * (least >= 0 ? leastSum : mostSum);
    }

    private double end(int high, int axis) {
        return high == 0 ? lowest[axis] : highest[axis];
    }

    private void grow() {
        int size = 2 * count;
        least = Arrays.copyOf(least, size);
        nominal = Arrays.copyOf(nominal, size);
        most = Arrays.copyOf(most, size);
        x = Arrays.copyOf(x, size);
        y = Arrays.copyOf(y, size);
        z = Arrays.copyOf(z, size);
        off = Arrays.copyOf(off, size);
        fill = Arrays.copyOf(fill, size);
    }

    int count() {
        return count;
    }

    int fill(int i) {
        return fill[i];
    }

    double least(int i) {
        return least[i];
    }

    double nominal(int i) {
        return nominal[i];
    }

    double most(int i) {
        return most[i];
    }

    /** Half width of the range of a mass that no load state sets (kg). */
    double uncertainty(int i) {
        return fill[i] < 0 ? most[i] - nominal[i] : 0;
    }

    double x(int i) {
        return x[i];
    }

    double y(int i) {
        return y[i];
    }

    double z(int i) {
        return z[i];
    }

    double off(int i) {
        return off[i];
    }

    /** How many masses it holds that no load state sets. */
    int fixed() {
        int fixed = 0;
        for (int i = 0; i < count; i++) {
            fixed += fill[i] < 0 ? 1 : 0;
        }
        return fixed;
    }

    /** The same with every mass that no load state sets, and its centre, drawn from its range: nothing is uncertain then. */
    MassTable drawn(Draw draw) {
        MassTable drawn = new MassTable();
        int number = 0;
        for (int i = 0; i < count; i++) {
            if (fill[i] < 0) {
                double massKg = Math.max(0, nominal[i] + draw.of(number, 0) * uncertainty(i));
                drawn.addFixed(
                        massKg,
                        0,
                        x[i] + draw.of(number, 1) * off[i],
                        y[i] + draw.of(number, 2) * off[i],
                        z[i] + draw.of(number, 3) * off[i],
                        0);
                number++;
            } else {
                drawn.add(least[i], nominal[i], most[i], x[i], y[i], z[i], off[i], fill[i]);
            }
        }
        return drawn;
    }

    /** Whether it holds the same masses at the same places. */
    boolean sameAs(MassTable other) {
        return count == other.count
                && Arrays.equals(x, 0, count, other.x, 0, count)
                && Arrays.equals(y, 0, count, other.y, 0, count)
                && Arrays.equals(z, 0, count, other.z, 0, count)
                && Arrays.equals(nominal, 0, count, other.nominal, 0, count)
                && Arrays.equals(fill, 0, count, other.fill, 0, count);
    }
}
