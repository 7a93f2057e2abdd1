package org.shelterwright.layouts.state;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.scene.Scene;

/**
 * All load states of a scene, searched without listing them. A load state says where loose units are (on station or on the
 * road), whether the trailer is coupled, and the fill of every tank and of the cab. Masses lie within their uncertainty, and
 * centres within theirs.
 *
 * <p>A quantity is linear in each of these, so it is most where each fill and mass is at the end that its own sign
 * asks for. A ratio is most where its numerator less the ratio times its denominator is most and zero (Dinkelbach, W.: On
 * nonlinear fractional programming, Management Science 13 (1967) 492-498). So the results are exact, interior fills
 * included. Cost: linear in the number of masses, times a few rounds for ratios.
 *
 * <p>Immutable; safe for several threads.
 */
public final class LoadStates {
    private static final int MOST_ROUNDS = 100;

    private final MassCollector masses;
    private final List<Mode> modes;
    private final boolean hasTrailer;

    private LoadStates(Scene scene) {
        masses = new MassCollector(scene, new MassModel(scene.rules()));
        hasTrailer = scene.trailer().isPresent();
        boolean moves = !table(Holder.BODY, Situation.ON_THE_ROAD).sameAs(table(Holder.BODY, Situation.ON_STATION));
        List<Mode> found = new ArrayList<>();
        for (Situation situation : List.of(Situation.ON_THE_ROAD, Situation.ON_STATION)) {
            if (situation == Situation.ON_THE_ROAD || moves) {
                if (hasTrailer) {
                    found.add(new Mode(situation, true));
                }
                found.add(new Mode(situation, false));
            }
        }
        modes = List.copyOf(found);
    }

    /** The load states of a scene, kept with it. */
    public static LoadStates of(Scene scene) {
        return scene.derived(LoadStates.class, LoadStates::new);
    }

    /**
     * On the road before on station, trailer on before off. If no mass stands elsewhere on station,
     * what is said of the road holds there too, and only that is listed.
     */
    public List<Mode> modes() {
        return modes;
    }

    public List<Mode> roadModes() {
        return modes.stream().filter(Mode::onTheRoad).toList();
    }

    /** Modes with the trailer coupled, on the road. */
    public List<Mode> drawnModes() {
        return modes.stream().filter(mode -> mode.onTheRoad() && mode.trailer()).toList();
    }

    public List<Fill> fills() {
        return List.copyOf(masses.fills);
    }

    /** Every figure that sums of mass lack. */
    public List<Gap> gaps() {
        return List.copyOf(masses.gaps);
    }

    /** What is missing for any of these quantities. */
    public List<Gap> gaps(Quantity... quantities) {
        Set<Gap> found = new LinkedHashSet<>();
        for (Gap gap : masses.gaps) {
            for (Quantity quantity : quantities) {
                if (gap.blocks(quantity.of(gap.holder()))) {
                    found.add(gap);
                }
            }
        }
        return List.copyOf(found);
    }

    /** The most that a quantity comes to in any of these modes. Masses that are not known count as nothing. */
    public Extreme most(Quantity quantity, List<Mode> among) {
        StatePass best = null;
        for (Mode mode : among) {
            StatePass pass = pass(mode, quantity, null, 0);
            if (best == null || pass.numerator() > best.numerator()) {
                best = pass;
            }
        }
        if (best == null) {
            throw new IllegalArgumentException("There must be a mode to look among.");
        }
        return new Extreme(best.numerator(), best.nominalNumerator(), best.state(hasTrailer && quantity.usesTrailer()));
    }

    public Extreme least(Quantity quantity, List<Mode> among) {
        return most(quantity.times(-1), among).negated();
    }

    /**
     * The most that a ratio of two quantities comes to in any of these modes.
     *
     * @return empty if the denominator is not above zero in all of them
     */
    public Optional<Extreme> mostRatio(Quantity numerator, Quantity denominator, List<Mode> among) {
        if (!(least(denominator, among).worst() > 0)) {
            return Optional.empty();
        }
        StatePass best = null;
        double ratio = Double.NEGATIVE_INFINITY;
        for (Mode mode : among) {
            StatePass pass =
                    best == null ? pass(mode, numerator, denominator, 0) : pass(mode, numerator, denominator, ratio);
            for (int round = 0; round < MOST_ROUNDS && pass.numerator() / pass.denominator() > ratio; round++) {
                best = pass;
                ratio = pass.numerator() / pass.denominator();
                pass = pass(mode, numerator, denominator, ratio);
            }
        }
        boolean tellsTrailer = hasTrailer && (numerator.usesTrailer() || denominator.usesTrailer());
        return best == null
                ? Optional.empty()
                : Optional.of(new Extreme(
                        ratio, best.nominalNumerator() / best.nominalDenominator(), best.state(tellsTrailer)));
    }

    public Optional<Extreme> leastRatio(Quantity numerator, Quantity denominator, List<Mode> among) {
        return mostRatio(numerator.times(-1), denominator, among).map(Extreme::negated);
    }

    /** What a quantity comes to with growth and without uncertainty, all fills full or all at their least. */
    public double nominal(Quantity quantity, Mode mode, boolean full) {
        double sum = quantity.tare(mode);
        for (Holder holder : holders(quantity, mode)) {
            MassTable table = table(holder, mode.situation());
            Influence influence = quantity.of(holder);
            for (int i = 0; i < table.count(); i++) {
                double kg = table.fill(i) < 0 || full ? table.nominal(i) : table.least(i);
                sum += kg * influence.at(table.x(i), table.y(i), table.z(i));
            }
        }
        return sum;
    }

    /** Sum of what the uncertainties of all masses do to a quantity. */
    public double uncertaintyKg(Quantity quantity, Mode mode) {
        double sum = 0;
        for (Holder holder : holders(quantity, mode)) {
            MassTable table = table(holder, mode.situation());
            for (int i = 0; i < table.count(); i++) {
                sum += table.uncertainty(i) * Math.abs(quantity.of(holder).at(table.x(i), table.y(i), table.z(i)));
            }
        }
        return sum;
    }

    /** The same as root of the sum of squares: likelier, if the uncertainties do not depend on each other. */
    public double uncertaintyRssKg(Quantity quantity, Mode mode) {
        double sum = 0;
        for (Holder holder : holders(quantity, mode)) {
            MassTable table = table(holder, mode.situation());
            for (int i = 0; i < table.count(); i++) {
                double one = table.uncertainty(i) * quantity.of(holder).at(table.x(i), table.y(i), table.z(i));
                sum += one * one;
            }
        }
        return Math.sqrt(sum);
    }

    private static List<Holder> holders(Quantity quantity, Mode mode) {
        List<Holder> holders = new ArrayList<>();
        for (Holder holder : Holder.values()) {
            if ((holder != Holder.TRAILER || mode.trailer())
                    && !quantity.of(holder).none()) {
                holders.add(holder);
            }
        }
        return holders;
    }

    MassTable table(Holder holder, Situation situation) {
        return switch (holder) {
            case BODY -> masses.body.get(situation.ordinal());
            case CARRIER -> masses.carrier;
            case TRAILER -> masses.trailer;
        };
    }

    private StatePass pass(Mode mode, Quantity numerator, @Nullable Quantity denominator, double ratio) {
        StatePass pass = new StatePass(mode, masses.fills, ratio);
        for (Holder holder : Holder.values()) {
            Influence n = numerator.of(holder);
            Influence d = denominator == null ? Influence.NONE : denominator.of(holder);
            if ((holder != Holder.TRAILER || mode.trailer()) && !(n.none() && d.none())) {
                pass.add(table(holder, mode.situation()), n, d);
            }
        }
        pass.choose(numerator.tare(mode), denominator == null ? 0 : denominator.tare(mode));
        return pass;
    }
}
