package org.shelterwright.layouts.power;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Battery;
import org.shelterwright.catalog.item.Converter;
import org.shelterwright.catalog.item.Current;
import org.shelterwright.catalog.item.Generator;
import org.shelterwright.catalog.item.Plant;
import org.shelterwright.catalog.item.Power;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.brief.Activity;
import org.shelterwright.layouts.brief.Feed;
import org.shelterwright.layouts.brief.OperatingState;
import org.shelterwright.layouts.brief.Services;
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.brief.Supply.Kind;
import org.shelterwright.layouts.brief.SupplyPair;
import org.shelterwright.layouts.brief.Weather;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;

/** Supplies and loads under test. Power factor 1, no diversity, and one state "day" unless told. Units need no place. */
public final class TestNet {
    private final Trial trial;
    private final List<OperatingState> states = new ArrayList<>();
    private final List<Supply> supplies = new ArrayList<>();
    private final List<Feed> feeds = new ArrayList<>();
    private final List<SupplyPair> apart = new ArrayList<>();
    private @Nullable Double altitudeM;

    public TestNet() {
        this(TrialBody.of(4000, 2000, 2000));
    }

    public TestNet(TrialBody body) {
        trial = Trial.in(body).limit(Figure.POWER_FACTOR, 1);
    }

    public static Supply shore(@Nullable Integer phases, @Nullable Double ratingA) {
        return supply("mains", Kind.SHORE, Current.AC, 230, phases, ratingA, null, List.of(), null);
    }

    public static Supply supply(
            String id,
            Kind kind,
            Current current,
            double voltageV,
            @Nullable Integer phases,
            @Nullable Double ratingA,
            @Nullable String source,
            List<String> fedFrom,
            @Nullable String charger) {
        String name = Character.toUpperCase(id.charAt(0)) + id.substring(1);
        return new Supply(id, name, kind, current, voltageV, phases, ratingA, source, fedFrom, charger, null);
    }

    public static Power ac(double watts, @Nullable Double inrushA) {
        return new Power("230 V ac", watts, null, inrushA, null, null, null, null);
    }

    public static Power dc(double watts) {
        return new Power("24 V dc", watts, null, 1.0, null, null, null, null);
    }

    public static Plant generator(double ratedVA, double ratedW, Generator.@Nullable Derating derating) {
        return new Plant(new Generator(ratedVA, ratedW, 2 * ratedVA, derating), null, null, null);
    }

    public static Plant battery(Battery battery) {
        return new Plant(null, battery, null, null);
    }

    public static Plant converter(Converter converter) {
        return new Plant(null, null, converter, null);
    }

    public TestNet limit(Figure figure, double value) {
        trial.limit(figure, value);
        return this;
    }

    public TestNet altitude(double m) {
        altitudeM = m;
        return this;
    }

    public TestNet supply(Supply supply) {
        supplies.add(supply);
        return this;
    }

    public TestNet state(String id, @Nullable Double hours, @Nullable Weather weather, String... live) {
        return state(id, 0, null, hours, weather, live);
    }

    public TestNet state(
            String id,
            int people,
            @Nullable Activity activity,
            @Nullable Double hours,
            @Nullable Weather weather,
            String... live) {
        states.add(new OperatingState(
                id, "by " + id, Situation.ON_STATION, List.of(live), people, activity, hours, weather));
        return this;
    }

    public TestNet load(String unit, Power power) {
        trial.toPlace(unit, TrialItem.of(unit, 100, 100, 100).power(power));
        return this;
    }

    public TestNet item(String unit, TrialItem item) {
        trial.toPlace(unit, item);
        return this;
    }

    public TestNet plant(String unit, Plant plant) {
        trial.toPlace(unit, TrialItem.of(unit, 100, 100, 100).plant(plant));
        return this;
    }

    public TestNet feed(String unit, String supply, @Nullable Integer phase) {
        return feed(new Feed(unit, supply, phase, List.of(), List.of(), List.of()));
    }

    public TestNet feed(Feed feed) {
        feeds.add(feed);
        return this;
    }

    public TestNet apart(String a, String b) {
        apart.add(new SupplyPair(a, b, "one must stay on"));
        return this;
    }

    private Trial asked() {
        if (states.isEmpty()) {
            state("day", null, null, "mains");
        }
        return trial.services(new Services(altitudeM, states, supplies, feeds, apart));
    }

    public PowerNet net() {
        return PowerNet.of(asked().scene());
    }

    public List<Row> rows(Limit limit) {
        return asked().rows(limit);
    }

    /** The only row of a limit. */
    public Row row(Limit limit) {
        List<Row> rows = rows(limit);
        if (rows.size() != 1) {
            throw new AssertionError("There are " + rows.size() + " rows: " + rows);
        }
        return rows.get(0);
    }
}
