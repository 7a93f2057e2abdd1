package org.shelterwright.app.desk.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.study.ComparisonPages;
import org.shelterwright.app.study.RunFilter;
import org.shelterwright.app.study.StudyColumn;
import org.shelterwright.app.study.TradeOff;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.Setting;
import org.shelterwright.layouts.study.StudyAxis;
import org.shelterwright.layouts.study.results.Measure;
import org.shelterwright.layouts.study.results.RunResult;

/** What is shown of a study: which runs, in which order, which two measures, and which runs are chosen. Holds no control. */
public final class RunBoard {
    /** Farther than this from a run (mm of the plot), a click means none. */
    private static final double REACH = 5;

    private final SealedStudy study;
    private final List<RunResult> all;
    private final Typeface typeface;
    private TradeOff tradeOff;
    private final ObjectProperty<RunFilter> filter = new SimpleObjectProperty<>(RunFilter.ALL);
    private final ObjectProperty<Measure> across;
    private final ObjectProperty<Measure> up;
    private final ObjectProperty<List<Integer>> chosen = new SimpleObjectProperty<>(List.of());

    /** @param all results that there are */
    public RunBoard(SealedStudy study, List<RunResult> all, Typeface typeface) {
        this.study = study;
        this.all = List.copyOf(all);
        this.typeface = typeface;
        this.tradeOff = TradeOff.within(typeface, 280, 100);
        List<Measure> known = measures();
        this.across = new SimpleObjectProperty<>(known.contains(Measure.MASS) ? Measure.MASS : known.get(0));
        this.up = new SimpleObjectProperty<>(known.contains(Measure.FREE) ? Measure.FREE : known.get(known.size() - 1));
    }

    public SealedStudy study() {
        return study;
    }

    public List<StudyColumn> columns() {
        return StudyColumn.of(study.study());
    }

    public ReadOnlyObjectProperty<RunFilter> filter() {
        return filter;
    }

    /** The measure from left to right. */
    public ObjectProperty<Measure> across() {
        return across;
    }

    /** The measure from below upwards. */
    public ObjectProperty<Measure> up() {
        return up;
    }

    /** Numbers of the chosen runs, in the order in which they were chosen; the first is what others are compared with. */
    public ReadOnlyObjectProperty<List<Integer>> chosen() {
        return chosen;
    }

    /** The measures that some run has. */
    public List<Measure> measures() {
        List<Measure> known = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            if (all.stream().anyMatch(run -> measure.of(run).isPresent())) {
                known.add(measure);
            }
        }
        return known.isEmpty() ? List.of(Measure.values()) : known;
    }

    /** The runs that are shown, in order. */
    public List<RunResult> shown() {
        return filter.get().of(all);
    }

    /** How many runs are shown of how many, in words. */
    public String count() {
        int total = study.plan().count();
        String done = all.size() < total ? "; " + (total - all.size()) + " of " + total + " are still to be done" : "";
        int shown = shown().size();
        return (shown == all.size() ? Integer.toString(shown) : shown + " of " + all.size())
                + (all.size() == 1 ? " run" : " runs")
                + done;
    }

    /** Whether runs with a setting are shown. */
    public boolean shows(String axis, String setting) {
        return Optional.ofNullable(filter.get().settings().get(axis))
                .map(ids -> ids.contains(setting))
                .orElse(true);
    }

    /** Shows the runs with a setting, or hides them. */
    public void show(String axis, String setting, boolean shown) {
        Map<String, List<String>> settings = new LinkedHashMap<>(filter.get().settings());
        List<String> all = study.study().axes().stream()
                .filter(one -> one.id().equals(axis))
                .map(StudyAxis::settings)
                .flatMap(List::stream)
                .map(Setting::id)
                .toList();
        List<String> ids = new ArrayList<>();
        for (String id : all) {
            if (id.equals(setting) ? shown : shows(axis, id)) {
                ids.add(id);
            }
        }
        settings.put(axis, ids);
        if (ids.equals(all)) {
            settings.remove(axis);
        }
        filter.set(filter.get().withSettings(settings));
    }

    /** Whether runs with a verdict are shown, see {@link RunFilter#VERDICTS}. */
    public boolean shows(String verdict) {
        return filter.get().verdicts().isEmpty() || filter.get().verdicts().contains(verdict);
    }

    /** Shows the runs with a verdict, or hides them; the last one that is shown stays. */
    public void show(String verdict, boolean shown) {
        Set<String> verdicts = new LinkedHashSet<>();
        for (String one : RunFilter.VERDICTS) {
            if (one.equals(verdict) ? shown : shows(one)) {
                verdicts.add(one);
            }
        }
        if (!verdicts.isEmpty()) {
            filter.set(filter.get().withVerdicts(verdicts.size() == RunFilter.VERDICTS.size() ? Set.of() : verdicts));
        }
    }

    /** Orders by a column. */
    public void order(String column, boolean descending) {
        StudyColumn by = columns().stream()
                .filter(one -> one.id().equals(column))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no column \"" + column + "\"."));
        filter.set(filter.get().ordered(by, descending));
    }

    /** Makes the plot as large as there is room (mm). */
    public void size(double width, double height) {
        tradeOff = TradeOff.within(typeface, width, height);
    }

    /** The plot of the shown runs; empty if none of them has both figures. */
    public Optional<Drawing> plot() {
        return spots().isEmpty()
                ? Optional.empty()
                : Optional.of(tradeOff.of(study.study().name(), shown(), across.get(), up.get(), ""));
    }

    /** Where the runs that are shown lie on the plot (mm), by their numbers. */
    public Map<Integer, Spot> spots() {
        return tradeOff.spots(shown(), across.get(), up.get());
    }

    /** Where the chosen runs lie on the plot. */
    public List<Spot> marks() {
        Map<Integer, Spot> spots = spots();
        List<Spot> marks = new ArrayList<>();
        for (int run : chosen.get()) {
            Spot spot = spots.get(run);
            if (spot != null) {
                marks.add(spot);
            }
        }
        return marks;
    }

    /** The run at a place of the plot (mm), the nearest one; empty if none is near. */
    public Optional<Integer> at(Spot place) {
        Integer nearest = null;
        double least = REACH;
        for (Map.Entry<Integer, Spot> one : spots().entrySet()) {
            double distance =
                    Math.hypot(one.getValue().x() - place.x(), one.getValue().y() - place.y());
            if (distance <= least) {
                least = distance;
                nearest = one.getKey();
            }
        }
        return Optional.ofNullable(nearest);
    }

    /** Chooses runs instead of those before. */
    public void choose(List<Integer> runs) {
        List<Integer> kept =
                new ArrayList<>(chosen.get().stream().filter(runs::contains).toList());
        runs.stream().filter(run -> !kept.contains(run)).forEach(kept::add);
        chosen.set(List.copyOf(kept));
    }

    /** Chooses a run as well, or no longer. */
    public void toggle(int run) {
        List<Integer> runs = new ArrayList<>(chosen.get());
        if (!runs.remove(Integer.valueOf(run))) {
            runs.add(run);
        }
        chosen.set(List.copyOf(runs));
    }

    /** The result of a run. */
    public RunResult result(int run) {
        return all.stream().filter(one -> one.run() == run).findFirst().orElseThrow();
    }

    /** Why the chosen runs cannot be compared; empty if they can. */
    public Optional<String> whyNotCompared() {
        int count = chosen.get().size();
        if (count < 2 || count > ComparisonPages.MOST) {
            return Optional.of("Choose two to " + ComparisonPages.MOST + " runs; "
                    + (count == 0 ? "none is" : count == 1 ? "one is" : count + " are") + " chosen.");
        }
        return refused();
    }

    /** Why no layout can be opened; empty if one can. */
    public Optional<String> whyNotOpened() {
        int count = chosen.get().size();
        return count == 1
                ? refused()
                : Optional.of("Choose one run; " + (count == 0 ? "none is" : count + " are") + " chosen.");
    }

    private Optional<String> refused() {
        if (study.ofJourney()) {
            return Optional.of(
                    "Runs of a journey have no layouts. Write one as a journey file: shelterwright study open.");
        }
        for (int run : chosen.get()) {
            String why = result(run).refused();
            if (why != null) {
                return Optional.of("Run " + run + " has no layout: " + why);
            }
        }
        return Optional.empty();
    }
}
