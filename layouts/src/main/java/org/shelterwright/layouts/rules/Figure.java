package org.shelterwright.layouts.rules;

import java.util.Optional;
import org.shelterwright.catalog.source.MassBasis;

/** The figures that rule sets set and a brief may override. Ids are stable: files use them. */
public enum Figure {
    CLOSE_SHARE("ledger.close-share", "share", "Use above which a met limit is shown as close"),
    WALKWAY_WIDTH("access.walkway-width", "mm", "Least width of walkways"),
    WALKWAY_HEADROOM("access.walkway-headroom", "mm", "Least headroom of walkways"),
    STEP_HEIGHT("access.step-height", "mm", "Height of solids that are stepped over"),
    EXIT_WIDTH("access.exit-width", "mm", "Least width of a way out"),
    EXIT_COUNT("access.exit-count", "", "Least number of ways out when more than one person works inside"),
    SEAT_HEADROOM("access.seat-headroom", "mm", "Least height above the floor that stays free at a work place"),
    REACH_HIGHEST("access.reach-highest", "mm", "Greatest height of a control above the floor"),
    EXIT_HEADROOM("access.exit-headroom", "mm", "Least headroom of a way out under what hangs from the roof"),
    EXIT_CEILING("access.exit-ceiling", "mm", "Least height of the roof over a way out"),
    ELECTRIC_VOLTAGE("access.electric-voltage", "V", "Voltage to earth of equipment that is worked at live"),
    ELECTRIC_DEPTH_LOW("access.electric-depth-low", "mm", "Working depth before live parts up to 150 V to earth"),
    ELECTRIC_DEPTH_EARTHED(
            "access.electric-depth-earthed", "mm", "Working depth from live parts, 151 to 600 V, to earthed ones"),
    ELECTRIC_DEPTH_LIVE(
            "access.electric-depth-live", "mm", "Working depth from live parts, 151 to 600 V, to live ones"),
    ELECTRIC_DEPTH_SIDE("access.electric-depth-side", "mm", "Working depth at a side that is worked at when dead"),
    ELECTRIC_WIDTH("access.electric-width", "mm", "Least width of a working space before electric equipment"),
    ELECTRIC_HEADROOM("access.electric-headroom", "mm", "Least headroom of a working space before electric equipment"),
    ELECTRIC_PROJECTION(
            "access.electric-projection",
            "mm",
            "How far what is above or below electric equipment may stand out before it"),
    RACK_FRONT("access.rack-front", "mm", "Least distance from the served side of a rack to what faces it"),
    DRAWER_FRONT("access.drawer-front", "mm", "Least distance from an opened drawer to what faces it"),
    WORK_PLACE_DEPTH("access.work-place-depth", "mm", "Least distance from the edge of a work place to what faces it"),
    WORK_PLACE_WIDTH("access.work-place-width", "mm", "Least width of the space at a work place"),
    AISLE_SPLIT("access.aisle-split", "mm", "Height above which an aisle must be wider"),
    AISLE_BELOW("access.aisle-below", "mm", "Least width of an aisle below that height"),
    AISLE_ABOVE("access.aisle-above", "mm", "Least width of an aisle above that height"),
    PERSON_MASS("mass.person", "kg", "Mass of one person"),
    PERSON_HEIGHT("mass.person-height", "mm", "Height of the centre of mass of a seated person above the floor"),
    GROWTH_ESTIMATED("mass.growth-estimated", "share", "Growth of an estimated mass"),
    GROWTH_CALCULATED("mass.growth-calculated", "share", "Growth of a calculated mass"),
    GROWTH_SUPPLIER("mass.growth-supplier", "share", "Growth of a supplier's mass"),
    GROWTH_WEIGHED("mass.growth-weighed", "share", "Growth of a weighed mass"),
    UNCERTAINTY_ESTIMATED("mass.uncertainty-estimated", "share", "Uncertainty of an estimated mass"),
    UNCERTAINTY_CALCULATED("mass.uncertainty-calculated", "share", "Uncertainty of a calculated mass"),
    UNCERTAINTY_SUPPLIER("mass.uncertainty-supplier", "share", "Uncertainty of a supplier's mass"),
    UNCERTAINTY_WEIGHED("mass.uncertainty-weighed", "share", "Uncertainty of a weighed mass"),
    MASS_RESERVE("mass.reserve-share", "share", "Share of the gross rating that stays free"),
    CENTRE_X_LOW("mass.centre-x-low", "mm", "Rearmost place of the centre of mass of the filled body"),
    CENTRE_X_HIGH("mass.centre-x-high", "mm", "Foremost place of the centre of mass of the filled body"),
    CENTRE_Y_OFF("mass.centre-y-off", "mm", "Greatest distance of the centre of mass from the middle plane"),
    CENTRE_Z_HIGH("mass.centre-z-high", "mm", "Greatest height of the centre of mass above the floor"),
    SIDE_DIFFERENCE("axles.side-difference", "share", "Greatest difference between left and right wheel loads"),
    STEERED_SHARE("axles.steered-share", "share", "Least share of the laden mass on the steered axles"),
    DRIVEN_SHARE("axles.driven-share", "share", "Least share of the laden mass on the driven axles"),
    GROSS_LIMIT("axles.gross-limit", "kg", "Permitted laden mass by the road rules"),
    LEAST_FIXINGS("restraint.least-fixings", "", "Least number of fixings of a unit that is bolted"),
    PRELOAD_SHARE("restraint.preload-share", "share", "Preload as a share of what bolt and hard point bear"),
    TORQUE_FACTOR("restraint.torque-factor", "", "Nut factor K of the tightening torque K F d"),
    SLING_ANGLE("lifting.sling-angle", "°", "Planned angle of the flattest sling leg above the level"),
    SLING_LEAST_ANGLE("lifting.least-angle", "°", "Least angle of a sling leg above the level"),
    SLING_LEG_LENGTH("lifting.leg-length", "mm", "Length of the sling legs, where they are given"),
    LIFT_DYNAMIC_FACTOR("lifting.dynamic-factor", "", "Factor for the jerk of a crane"),
    LIFT_TILT("lifting.tilt", "°", "Greatest tilt of the body when it hangs on equal sling legs"),
    STAND_MARGIN(
            "lifting.stand-margin", "mm", "Least distance of the centre of mass from the edges of the stands' base"),
    STATIC_STABILITY_FACTOR("stability.static-factor", "", "Least static stability factor"),
    TILT_ANGLE("stability.tilt-angle", "°", "Tilt that must be stood"),
    CENTRE_HEIGHT_TO_TRACK("stability.height-to-track", "share", "Greatest height of the centre against the track"),
    SIDE_SLOPE("stability.side-slope", "share", "Side slope that must be stood"),
    GRADE("stability.grade", "share", "Grade that must be stood"),
    DIVERSITY("power.diversity", "share", "Share of the sum of its loads that a supply bears at once"),
    POWER_FACTOR("power.power-factor", "", "Power factor of a load that states none"),
    START_FACTOR("power.start-factor", "", "Start current that a breaker stands, over its rating"),
    PHASE_DIFFERENCE("power.phase-difference", "share", "Greatest difference of a phase from the mean of three"),
    GENERATOR_RESERVE("power.generator-reserve", "share", "Share of the derated generator that stays free"),
    BATTERY_AGEING("power.battery-ageing", "share", "Share of the capacity that an aged battery still has"),
    CHARGE_FACTOR("power.charge-factor", "", "Charge put in over charge taken out"),
    CHARGE_HOURS("power.charge-hours", "h", "Longest time until a battery is full again"),
    CABLE_SLACK_END("cables.slack-end", "mm", "Spare length of a cable at each end"),
    CABLE_SLACK_SHARE("cables.slack-share", "share", "Spare length of a cable as a share of its route"),
    TRAY_FILL("cables.tray-fill", "share", "Greatest share of the cross-section of a tray that cables take"),
    DUCT_FILL_ONE("cables.duct-fill-one", "share", "The same of a closed duct with one cable"),
    DUCT_FILL_TWO("cables.duct-fill-two", "share", "The same of a closed duct with two cables"),
    DUCT_FILL_MORE("cables.duct-fill-more", "share", "The same of a closed duct with more cables"),
    PLUG_DEPTH("cables.plug-depth", "mm", "How far a plug and the bend behind it reach out of a port"),
    PLUG_WIDTH("cables.plug-width", "mm", "Width of the room of a plug, across"),
    CABLE_SEPARATION("cables.separation", "mm", "Least distance of power cables from unscreened others beside them"),
    CABLE_PARALLEL("cables.parallel", "mm", "Length over which two cables may run nearer than that"),
    VOLTAGE_DROP("cables.voltage-drop", "share", "Greatest voltage drop of a wire"),
    CONDUCTOR_TEMPERATURE("cables.conductor-temperature", "°C", "Temperature of a loaded conductor"),
    CABLE_GROUPING("cables.grouping", "share", "Share of its current that a cable among others bears"),
    FRESH_AIR("heat.fresh-air", "m³/h", "Least fresh air for each person inside"),
    TOOL_REACH("bolt-down.tool-reach", "mm", "Farthest that a hand with a tool reaches into or past a unit"),
    TOOL_WIDTH("bolt-down.tool-width", "mm", "Width of the space that a hand with a tool needs"),
    TOOL_DEPTH("bolt-down.tool-depth", "mm", "Free depth beside a unit where somebody works at its fixings"),
    LIFT_CONSTANT("bolt-down.lift-constant", "kg", "Mass that one person may lift under the best conditions"),
    LIFT_TWIST("bolt-down.lift-twist", "°", "Twist of the body while lifting"),
    LIFT_RATE("bolt-down.lift-rate", "1/min", "Lifts in a minute"),
    LIFT_GRIP("bolt-down.lift-grip", "", "Coupling multiplier: how well a unit can be gripped"),
    LIFT_PEOPLE("bolt-down.lift-people", "", "Most people at one lift"),
    TEAM_OF_TWO("bolt-down.team-of-two", "share", "Share of the sum of what two people lift that they lift together"),
    TEAM_OF_MORE("bolt-down.team-of-more", "share", "The same of three people and more"),
    TEAM_HOLD(
            "bolt-down.team-hold",
            "mm",
            "Distance of the hands from the ankles where several hold a unit at its edges"),
    STEP_PLATFORM("bolt-down.step-platform", "mm", "Height of the step platform for what is lifted above 1.5 m"),
    TROLLEY_RATING("bolt-down.trolley-rating", "kg", "Mass that the floor trolley takes"),
    HOIST_RATING("bolt-down.hoist-rating", "kg", "Mass that the hoist or lifting table takes"),
    REMOVAL_MOVED("bolt-down.removal-moved", "", "Most units that are moved before a serviced one comes out"),
    FIRST_STAGE("bolt-down.first-stage", "share", "Share of the torque that is put on in the first round"),
    MINUTES_IN("bolt-down.minutes-in", "min", "Time to make ready and bring one unit in, beside its way"),
    MINUTES_PER_METRE("bolt-down.minutes-per-metre", "min", "Time for each metre of the way in"),
    MINUTES_PER_HOIST("bolt-down.minutes-per-hoist", "min", "Time to sling a unit or set up a lifting table"),
    MINUTES_PER_FIXING("bolt-down.minutes-per-fixing", "min", "Time to set one fixing and tighten it in both rounds"),
    MINUTES_PER_CABLE_END("bolt-down.minutes-per-cable-end", "min", "Time to connect and mark one end of a cable"),
    MINUTES_PER_CABLE_METRE("bolt-down.minutes-per-cable-metre", "min", "Time to lay one metre of cable"),
    MINUTES_PER_PIECE("bolt-down.minutes-per-piece", "min", "Time to fit one rack-mounted piece"),
    MINUTES_PER_CHECK("bolt-down.minutes-per-check", "min", "Time for one check with its record"),
    RACK_FREE_SHARE("racks.free-share", "share", "Share of the height units of a bay that stays free"),
    RACK_CENTRE_SHARE("racks.centre-share", "share", "Greatest height of the centre of mass in a bay, of its height"),
    RACK_HEAVY("racks.heavy", "kg", "Mass from which a piece must sit in the lower half of its bay"),
    RACK_REAR_HOLD("racks.rear-hold", "kg", "Mass from which a piece must be held at the rear too"),
    RACK_AIR_RISE("racks.air-rise", "K", "Greatest warming of the air that goes through a bay"),
    RACK_SLIDE_GAP("racks.slide-gap", "mm", "Room left before a piece that is slid out"),
    RACK_TIP_FACTOR("racks.tip-factor", "", "Safety factor against tipping while a piece is slid out"),
    RACK_EYE_LOW("racks.eye-low", "mm", "Least height above the floor of what is looked at while working"),
    RACK_EYE_HIGH("racks.eye-high", "mm", "Greatest height above the floor of what is looked at while working"),
    RACK_HAND_LOW("racks.hand-low", "mm", "Least height above the floor of what is operated by hand"),
    RACK_HAND_HIGH("racks.hand-high", "mm", "Greatest height above the floor of what is operated by hand"),
    STOWAGE_GRIP("stowage.grip", "mm", "Room for fingers at two sides of a loose piece"),
    STOWAGE_REST_SHARE("stowage.rest-share", "share", "Least share of its base on which a loose piece rests"),
    STOWAGE_REACH_AT_ONCE("stowage.reach-at-once", "mm", "Farthest that what is needed at once lies from its task"),
    STOWAGE_REACH_SOON("stowage.reach-soon", "mm", "Farthest that what is needed soon lies from its task"),
    STOWAGE_ORDER_SLACK(
            "stowage.order-slack",
            "mm",
            "How much farther from its task what is used first may lie than what is used later"),
    STOWAGE_ROOM_LOW("stowage.room-low", "°C", "Lowest temperature in places that are as warm as the room"),
    STOWAGE_ROOM_HIGH("stowage.room-high", "°C", "Highest temperature in places that are as warm as the room"),
    OUTLINE_MARGIN("transport.outline-margin", "mm", "Least distance of a load from the outline, each side and above"),
    WHEEL_RATIO("transport.wheel-ratio", "", "Greatest ratio of the loads of both sides of a wagon's wheels"),
    BOGIE_RATIO("transport.bogie-ratio", "", "Greatest ratio of the loads of two bogies"),
    WAGON_AXLE_RATIO("transport.axle-ratio", "", "Greatest ratio of the loads of two single axles of a wagon"),
    VEHICLE_GAP("transport.vehicle-gap", "mm", "Least distance between vehicles on a car"),
    LENGTH_TOLERANCE("transport.length-tolerance", "mm", "What a vehicle may be longer than its data say"),
    DOOR_PLAY_WIDE("transport.door-play-wide", "mm", "What a doorway must be wider than what passes"),
    DOOR_PLAY_HIGH("transport.door-play-high", "mm", "What a doorway must be higher than what passes"),
    HALF_LENGTH_SHARE("transport.half-length-share", "share", "Greatest share of a load on half of the length"),
    LOAD_OFF_ALONG(
            "transport.off-along", "share", "Greatest distance of a load's centre from mid-length, of the length"),
    LOAD_OFF_ACROSS(
            "transport.off-across", "share", "Greatest distance of a load's centre from the middle, of the width"),
    TIE_DOWN_FACTOR("transport.tie-down-factor", "", "Safety factor of friction by tie-downs"),
    LASHING_LEAST_ANGLE("transport.lashing-least-angle", "°", "Least angle of a direct lashing to the floor"),
    LASHING_MOST_ANGLE("transport.lashing-most-angle", "°", "Greatest angle of a direct lashing to the floor"),
    TIE_DOWN_LEAST_ANGLE("transport.tie-down-least-angle", "°", "Least angle of a tie-down to the floor"),
    TENSIONER_SPACE("transport.tensioner-space", "mm", "Least free width beside a tensioner for hands and tool"),
    US_TIEDOWNS("transport.us-tiedowns", "", "1 where the count and strength of 49 CFR 393 are asked"),
    BREAKOVER_PLAY("transport.ramp-play", "°", "What a vehicle's ramp angles must be more than the slope of a ramp");

    private final String id;
    private final String unit;
    private final String meaning;

    Figure(String id, String unit, String meaning) {
        this.id = id;
        this.unit = unit;
        this.meaning = meaning;
    }

    public String id() {
        return id;
    }

    /** The growth of a mass that is known in this way. */
    public static Figure growth(MassBasis basis) {
        return switch (basis) {
            case ESTIMATED -> GROWTH_ESTIMATED;
            case CALCULATED -> GROWTH_CALCULATED;
            case SUPPLIER -> GROWTH_SUPPLIER;
            case WEIGHED -> GROWTH_WEIGHED;
        };
    }

    /** The uncertainty of a mass that is known in this way. */
    public static Figure uncertainty(MassBasis basis) {
        return switch (basis) {
            case ESTIMATED -> UNCERTAINTY_ESTIMATED;
            case CALCULATED -> UNCERTAINTY_CALCULATED;
            case SUPPLIER -> UNCERTAINTY_SUPPLIER;
            case WEIGHED -> UNCERTAINTY_WEIGHED;
        };
    }

    /** Unit of the value; "share" is a number from 0 to 1. */
    public String unit() {
        return unit;
    }

    public String meaning() {
        return meaning;
    }

    public static Optional<Figure> byId(String id) {
        for (Figure figure : values()) {
            if (figure.id.equals(id)) {
                return Optional.of(figure);
            }
        }
        return Optional.empty();
    }
}
