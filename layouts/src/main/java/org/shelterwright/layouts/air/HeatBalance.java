package org.shelterwright.layouts.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Insulation;
import org.shelterwright.catalog.item.AirHandling;
import org.shelterwright.catalog.item.Plant;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.brief.Activity;
import org.shelterwright.layouts.brief.OperatingState;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Weather;
import org.shelterwright.layouts.power.Consumer;
import org.shelterwright.layouts.power.Draw;
import org.shelterwright.layouts.power.PowerGap;
import org.shelterwright.layouts.power.PowerNet;
import org.shelterwright.layouts.power.StateFlow;
import org.shelterwright.layouts.power.SupplyFlow;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/**
 * The heat balances of a scene, one for each state that states its weather. Steady: nothing is stored in walls or equipment.
 * It depends on brief, catalog entries and rules, on no placement.
 *
 * <p>Air brings in {@code V ρ c (T_o − T_r)} and, with its moisture, {@code V ρ r Δx}: density ρ = 1.2 kg/m³, heat capacity c
 * = 1.005 kJ/(kg·K), heat of evaporation r = 2501 kJ/kg. V is what the people need, or what an exhaust draws in if that is
 * more, and what leaks in; where outside air cools, units that bring it in may bring in more, up to all that they can.
 *
 * @param shell {@code null} if the insulation of the body is not known
 */
public record HeatBalance(@Nullable Shell shell, List<StateHeat> states) {
    /** Heat of 1 m³/h of air that is 1 K warmer (W): 1.2 kg/m³ · 1005 J/(kg·K) / 3600 s. */
    static final double AIR_W_PER_M3H_K = 1.2 * 1005 / 3600;

    /** Heat of 1 m³/h of air that holds 1 g/kg more water (W): 1.2 kg/m³ · 2501 J/g / 3600 s. */
    static final double MOISTURE_W_PER_M3H_GKG = 1.2 * 2501 / 3600;

    public HeatBalance {
        states = List.copyOf(states);
    }

    /** The balances of a scene, kept with it. */
    public static HeatBalance of(Scene scene) {
        return scene.derived(HeatBalance.class, HeatBalance::made);
    }

    private static HeatBalance made(Scene scene) {
        Insulation insulation = scene.body().insulation();
        Shell shell = insulation == null ? null : Shell.of(scene.body(), insulation);
        PowerNet net = PowerNet.of(scene);
        List<StateHeat> states = new ArrayList<>();
        for (StateFlow flow : net.flows()) {
            Weather weather = flow.state().weather();
            if (weather != null) {
                states.add(state(scene, net, flow, weather, shell, insulation));
            }
        }
        return new HeatBalance(shell, states);
    }

    private static StateHeat state(
            Scene scene,
            PowerNet net,
            StateFlow flow,
            Weather weather,
            @Nullable Shell shell,
            @Nullable Insulation insulation) {
        OperatingState state = flow.state();
        List<PowerGap> gaps = new ArrayList<>(gaps(scene, net, flow));
        AirPlant plant = AirPlant.of(scene, flow, weather);
        gaps.addAll(plant.gaps());
        Activity activity = state.activity();
        Double freshNeeded = freshNeeded(scene, state, gaps);
        double leakM3h = insulation == null
                ? 0
                : insulation.airChangesPerHour() * volumeM3(scene.body().inside());
        double leastM3h = Math.max(freshNeeded == null ? 0 : freshNeeded, plant.exhaustM3h());
        double equipment = 0;
        double conversion = 0;
        for (SupplyFlow one : flow.flows()) {
            equipment += one.draws().stream().mapToDouble(Draw::heatW).sum();
            conversion += one.lossW();
        }
        double sensible = activity == null ? 0 : state.people() * activity.sensibleW();
        double latent = activity == null ? 0 : state.people() * activity.latentW();
        double through = shell == null ? 0 : shell.throughW(weather.outsideC(), weather.roomMostC());
        double sun = shell == null ? 0 : shell.sunW(weather);
        double perM3h = AIR_W_PER_M3H_K * (weather.outsideC() - weather.roomMostC())
                + MOISTURE_W_PER_M3H_GKG * weather.moistureGKg();
        double left = equipment + conversion + sensible + latent + through + sun + perM3h * (leastM3h + leakM3h);
        double moreM3h =
                perM3h < 0 && left > 0 ? Math.min(-left / perM3h, Math.max(0, plant.freshM3h() - leastM3h)) : 0;
        double airM3h = leastM3h + leakM3h + moreM3h;
        return new StateHeat(
                state,
                weather,
                equipment,
                conversion,
                sensible,
                latent,
                through,
                sun,
                airM3h,
                AIR_W_PER_M3H_K * airM3h * (weather.outsideC() - weather.roomMostC()),
                MOISTURE_W_PER_M3H_GKG * airM3h * weather.moistureGKg(),
                shell == null ? 0 : Math.max(0, -shell.throughW(weather.outsideC(), weather.roomLeastC())),
                AIR_W_PER_M3H_K * (leastM3h + leakM3h) * Math.max(0, weather.roomLeastC() - weather.outsideC()),
                plant.coolingW(),
                plant.heatingW(),
                freshNeeded,
                plant.freshM3h(),
                gaps);
    }

    private static @Nullable Double freshNeeded(Scene scene, OperatingState state, List<PowerGap> gaps) {
        if (state.people() == 0) {
            return 0.0;
        }
        OptionalDouble each = scene.rules().value(Figure.FRESH_AIR);
        if (each.isEmpty()) {
            gaps.add(
                    0,
                    new PowerGap(
                            null,
                            "How much fresh air a person needs is not set. Choose a rule set that sets "
                                    + Figure.FRESH_AIR.id() + ", or set it in the limits of the brief."));
            return null;
        }
        return state.people() * each.getAsDouble();
    }

    private static List<PowerGap> gaps(Scene scene, PowerNet net, StateFlow flow) {
        List<PowerGap> gaps = new ArrayList<>();
        if (scene.body().insulation() == null) {
            gaps.add(new PowerGap(
                    null,
                    "How heat passes through the body " + scene.body().name()
                            + " is not known. Give insulation in body "
                            + scene.body().id() + "."));
        }
        net.consumers().stream()
                .filter(Consumer::inside)
                .map(Consumer::gap)
                .flatMap(gap -> Optional.ofNullable(gap).stream())
                .forEach(gaps::add);
        flow.flows().forEach(one -> gaps.addAll(one.gaps()));
        return gaps.stream().distinct().toList();
    }

    private static double volumeM3(Size inside) {
        return Lengths.metres(inside.x()) * Lengths.metres(inside.y()) * Lengths.metres(inside.z());
    }

    /** The units of the body that treat its air. */
    public static List<UnitSpec> airUnits(Scene scene) {
        return scene.brief().units().stream()
                .filter(unit -> air(scene, unit).isPresent())
                .toList();
    }

    static Optional<AirHandling> air(Scene scene, UnitSpec unit) {
        Plant plant = scene.layout().item(unit).plant();
        return plant == null ? Optional.empty() : Optional.ofNullable(plant.air());
    }
}
