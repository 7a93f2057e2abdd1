package org.shelterwright.layouts.power;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Battery;
import org.shelterwright.catalog.item.Converter;
import org.shelterwright.catalog.item.Current;
import org.shelterwright.catalog.item.Generator;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Plant;
import org.shelterwright.catalog.item.Power;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.OperatingState;
import org.shelterwright.layouts.brief.Services;
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.brief.Supply.Kind;
import org.shelterwright.layouts.brief.Trailer;
import org.shelterwright.layouts.brief.TrailerLoad;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.scene.Scene;

/**
 * The supplies of a brief with the units that draw from them, and what flows in each operating state. It depends on brief,
 * catalog entries and rules, on no placement. Cost: units times supplies times states. Immutable.
 */
public final class PowerNet {
    private final Services services;
    private final Rules rules;
    private final Map<String, Item> items = new HashMap<>();
    private final Map<String, UnitSpec> inside = new HashMap<>();
    private final List<Consumer> consumers;
    private final Map<String, StateFlow> flows = new LinkedHashMap<>();

    private PowerNet(Scene scene) {
        Brief brief = scene.brief();
        Services stated = brief.services();
        services = stated == null ? new Services(null, List.of(), List.of(), List.of(), List.of()) : stated;
        rules = scene.rules();
        brief.units().forEach(unit -> inside.put(unit.id(), unit));
        Trailer trailer = brief.trailer();
        Stream<UnitSpec> loads =
                trailer == null ? Stream.empty() : trailer.loads().stream().map(TrailerLoad::unit);
        Stream.concat(brief.units().stream(), loads)
                .forEach(unit -> items.put(unit.id(), scene.layout().item(unit)));
        consumers = Consumers.of(scene.layout(), services);
        for (OperatingState state : services.states()) {
            flows.put(state.id(), StateFlow.of(this, state));
        }
    }

    /** The net of a scene, kept with it. */
    public static PowerNet of(Scene scene) {
        return scene.derived(PowerNet.class, PowerNet::new);
    }

    public Services services() {
        return services;
    }

    /** The units that draw power, those of the body first, placed or not. */
    public List<Consumer> consumers() {
        return consumers;
    }

    /** By state, in the order of the brief. */
    public List<StateFlow> flows() {
        return List.copyOf(flows.values());
    }

    /** What is missing of the units that may draw from a supply, or from one that it feeds. */
    public List<PowerGap> gapsOf(Supply supply) {
        return consumers.stream()
                .filter(consumer -> consumer.mayBe().contains(supply.id()))
                .flatMap(consumer -> Stream.ofNullable(consumer.gap()))
                .toList();
    }

    public Optional<Generator> generator(Supply supply) {
        return plant(supply.source()).map(Plant::generator);
    }

    public Optional<Battery> battery(Supply supply) {
        return supply.kind() == Kind.BATTERY ? plant(supply.source()).map(Plant::battery) : Optional.empty();
    }

    /** The unit that converts for a supply, or charges it. */
    public Optional<Converter> converter(Supply supply) {
        return plant(Conversion.unit(supply)).map(Plant::converter);
    }

    /** What a unit provides. */
    public Optional<Plant> plant(@Nullable String unit) {
        return Optional.ofNullable(unit).map(items::get).map((Function<Item, @Nullable Plant>) Item::plant);
    }

    boolean inside(@Nullable String unit) {
        return unit != null && inside.containsKey(unit);
    }

    /**
     * The power factor of a load on a supply: 1 for dc, its own, or the default of the rules; empty if that is not set.
     *
     * @param power {@code null} for a converter, which states none
     */
    public OptionalDouble powerFactor(@Nullable Power power, Supply supply) {
        if (supply.current() == Current.DC) {
            return OptionalDouble.of(1);
        }
        Double stated = power == null ? null : power.powerFactor();
        return stated == null ? rules.value(Figure.POWER_FACTOR) : OptionalDouble.of(stated);
    }

    /** Whether a supply has the voltage, the current and the phases that a load takes. */
    public static boolean fits(Power power, Supply supply) {
        return Consumers.fits(power, supply);
    }

    /** Share of its loads that a supply bears at once: its own, or that of the rules, or all. */
    public double diversity(Supply supply) {
        return supply.diversity() == null ? rules.valueOr(Figure.DIVERSITY, 1) : supply.diversity();
    }

    /** The least of what breaker and source allow on a line (A); {@code null} if neither is known. */
    public @Nullable Double ratingA(SupplyFlow flow) {
        Supply supply = flow.supply();
        Double most = supply.ratingA();
        Converter converter =
                supply.kind() == Supply.Kind.CONVERTER ? converter(supply).orElse(null) : null;
        if (converter != null) {
            Double outVA = converter.outVA();
            Double given = flow.passes()
                    ? converter.passA()
                    : outVA == null ? null : Double.valueOf(outVA / supply.voltageV() / supply.lines());
            most = least(most, given);
        }
        Generator generator =
                supply.kind() == Supply.Kind.GENERATOR ? generator(supply).orElse(null) : null;
        return generator == null ? most : least(most, generator.ratedVA() / supply.voltageV() / supply.lines());
    }

    private static @Nullable Double least(@Nullable Double a, @Nullable Double b) {
        return a == null ? b : b == null ? a : Double.valueOf(Math.min(a, b));
    }
}
