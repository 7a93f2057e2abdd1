package org.shelterwright.layouts.study.results;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** A figure by which runs are compared. */
public enum Measure {
    BROKEN("broken", "Broken limits", "", Better.LESS, run ->
            (double) run.counts().broken()),
    OPEN("open", "Limits broken or not assessed", "", Better.LESS, run ->
            (double) (run.counts().broken() + run.counts().notAssessed())),
    CLOSE("close", "Limits close", "", Better.LESS, run -> (double) run.counts().close()),
    USE("use", "Use of the governing limit", "share", Better.LESS, run -> governingUse(run)),
    MASS(
            "mass",
            "Mass of the filled body",
            "kg",
            Better.LESS,
            run -> run.measures().massKg()),
    GROSS("gross", "Gross mass", "kg", Better.LESS, run -> run.measures().grossKg()),
    CENTRE_X(
            "centre-x",
            "Centre of mass, x",
            "mm",
            Better.NEITHER,
            run -> run.measures().xMm()),
    CENTRE_Y(
            "centre-y",
            "Centre of mass, y",
            "mm",
            Better.NEITHER,
            run -> run.measures().yMm()),
    CENTRE_Z(
            "centre-z",
            "Centre of mass, z",
            "mm",
            Better.LESS,
            run -> run.measures().zMm()),
    AXLE_RESERVE(
            "axle-reserve",
            "Least reserve of an axle",
            "kg",
            Better.MORE,
            run -> run.measures().axleReserveKg()),
    CABLE("cable", "Length of cables", "m", Better.LESS, run -> run.measures().cableM()),
    FREE("free", "Free room", "m³", Better.MORE, run -> run.measures().freeM3()),
    CARS(
            "cars",
            "Cars that carry something",
            "",
            Better.LESS,
            run -> run.measures().cars()),
    CARS_LENGTH(
            "cars-length",
            "Length of these cars",
            "m",
            Better.LESS,
            run -> run.measures().carsLengthM()),
    LEFT(
            "left",
            "Pieces without a place",
            "",
            Better.LESS,
            run -> run.measures().left()),
    WISHES("wishes", "Wishes missed", "", Better.LESS, run -> (double) run.wishes()),
    SECONDS("seconds", "Time", "s", Better.NEITHER, RunResult::seconds);

    private final String id;
    private final String title;
    private final String unit;
    private final Better better;
    private final Function<RunResult, @Nullable Double> figure;

    Measure(String id, String title, String unit, Better better, Function<RunResult, @Nullable Double> figure) {
        this.id = id;
        this.title = title;
        this.unit = unit;
        this.better = better;
        this.figure = figure;
    }

    /** Which figures are better. */
    public enum Better {
        LESS,
        MORE,
        /** Neither as such: there is a window, or it says nothing of the layout. */
        NEITHER
    }

    public static Optional<Measure> byId(String id) {
        return Arrays.stream(values()).filter(one -> one.id.equals(id)).findFirst();
    }

    public static List<String> ids() {
        return Arrays.stream(values()).map(Measure::id).toList();
    }

    public String id() {
        return id;
    }

    public String title() {
        return title;
    }

    /** Unit of the figure; empty if it is a number. */
    public String unit() {
        return unit;
    }

    public Better better() {
        return better;
    }

    /** The figure of a run; empty if it is not known, or the run was refused. */
    public OptionalDouble of(RunResult run) {
        Double value = run.refused() == null ? figure.apply(run) : null;
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** Where nothing is allowed there is no share of it. */
    private static @Nullable Double governingUse(RunResult run) {
        Governing governing = run.governing();
        return governing == null || governing.capacity() <= 0 ? null : Double.valueOf(governing.use());
    }
}
