package org.shelterwright.layouts.state;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
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
    private final List<Mode> roadModes;
    private final List<Mode> drawnModes;
    private final boolean hasTrailer;

    private LoadStates(Scene scene) {
        this(
                new MassCollector(scene, new MassModel(scene.rules())),
                scene.trailer().isPresent());
    }

    private LoadStates(MassCollector collected, boolean trailer) {
        masses = collected;
        hasTrailer = trailer;
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
        roadModes = modes.stream().filter(Mode::onTheRoad).toList();
        drawnModes = roadModes.stream().filter(Mode::trailer).toList();
    }

    /** The load states of a scene, kept with it. */
    public static LoadStates of(Scene scene) {
        return scene.derived(LoadStates.class, LoadStates::new);
    }

    /**
     * A scene equal to this one, but for its masses: each, and its centre, is drawn evenly from its range and certain then. Limits
     * that ask for load states see those.
     */
    public static Scene drawn(Scene scene, SplittableRandom dice) {
        LoadStates known = of(scene);
        Scene other = scene.after(scene.layout());
        other.derived(LoadStates.class, any -> new LoadStates(known.masses.drawn(dice), known.hasTrailer));
        return other;
    }

    /**
     * On the road before on station, trailer on before off. If no mass stands elsewhere on station,
     * what is said of the road holds there too, and only that is listed.
     */
    public List<Mode> modes() {
        return modes;
    }

    public List<Mode> roadModes() {
        return roadModes;
    }

    /** Modes with the trailer coupled, on the road. */
    public List<Mode> drawnModes() {
        return drawnModes;
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
        if (masses.gaps.isEmpty()) {
            return List.of();
        }
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
        if (among.isEmpty()) {
            throw new IllegalArgumentException("There must be a mode to look among.");
        }
        StateSearch search = new StateSearch(this, masses.fills, quantity, Quantity.NONE);
        for (ModeSet set : ModeSet.of(among)) {
            search.look(set, 0);
            if (!search.found() || search.numerator() > search.bestNumerator()) {
                search.keep();
            }
        }
        return search.bestSum(hasTrailer);
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
        if (among.isEmpty() || !alwaysPositive(denominator, among)) {
            return Optional.empty();
        }
        StateSearch search = new StateSearch(this, masses.fills, numerator, denominator);
        for (ModeSet set : ModeSet.of(among)) {
            double ratio = search.found() ? search.bestRatio() : anyRatio(numerator, denominator, set);
            search.look(set, ratio);
            for (int round = 0; round < MOST_ROUNDS && (!search.found() || search.ratio() > ratio); round++) {
                search.keep();
                ratio = search.bestRatio();
                search.look(set, ratio);
            }
        }
        return Optional.of(search.bestShare(hasTrailer));
    }

    /** The ratio of one state, to begin with. */
    private double anyRatio(Quantity numerator, Quantity denominator, ModeSet set) {
        Mode mode = new Mode(set.situation(), !set.trailerOff());
        double n = numerator.tare(mode);
        double d = denominator.tare(mode);
        for (Holder holder : Holder.values()) {
            if (holder != Holder.TRAILER || mode.trailer()) {
                n += table(holder, mode.situation()).nominal(numerator.of(holder));
                d += table(holder, mode.situation()).nominal(denominator.of(holder));
            }
        }
        return n / d;
    }

    /** Tries a bound first, since it costs little and mostly suffices. */
    private boolean alwaysPositive(Quantity quantity, List<Mode> among) {
        for (Mode mode : among) {
            double bound = quantity.tare(mode);
            for (Holder holder : Holder.values()) {
                if (holder != Holder.TRAILER || mode.trailer()) {
                    bound += table(holder, mode.situation()).lowerBound(quantity.of(holder));
                }
            }
            if (!(bound > 0)) {
                return least(quantity, among).worst() > 0;
            }
        }
        return true;
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

    /** What the uncertainty of each mass does to a quantity, up or down; without those that are certain. */
    public double[] halfWidthsKg(Quantity quantity, Mode mode) {
        List<Double> widths = new ArrayList<>();
        for (Holder holder : holders(quantity, mode)) {
            MassTable table = table(holder, mode.situation());
            for (int i = 0; i < table.count(); i++) {
                double one = table.uncertainty(i) * quantity.of(holder).at(table.x(i), table.y(i), table.z(i));
                if (one != 0) {
                    widths.add(Math.abs(one));
                }
            }
        }
        return widths.stream().mapToDouble(Double::doubleValue).toArray();
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

    /** Fills from this number on are those of the trailer. */
    int firstTrailerFill() {
        return masses.firstTrailerFill;
    }
}
