package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;

/** What a ledger does not answer, so that nobody takes silence for an answer. */
final class NotModelled {

    private static final Map<Subject, String> MEANING = new EnumMap<>(Map.of(
            Subject.FIT, "whether units overlap, lie inside and land on hard points",
            Subject.ACCESS, "clear zones, walkways and ways out",
            Subject.MASS, "total mass and its centre",
            Subject.FLOOR, "floor pressure, zone loads and cross-members",
            Subject.AXLES, "axle and wheel loads",
            Subject.STABILITY, "rollover and slopes",
            Subject.CABLES, "cable routes and lengths, tray fill, bend radii, voltage drop and separation",
            Subject.POWER, "supplies, diversity, inrush and endurance",
            Subject.HEAT, "heat balance, cooling, heating and fresh air"));

    private static final Map<Subject, String> LATER = new EnumMap<>(Map.of(
            Subject.RESTRAINT, "strength of fixings and hard points under braking, cornering and shock",
            Subject.BOLT_DOWN, "whether each unit can be brought in, and in which order",
            Subject.TRANSPORT, "transport envelopes, wagons, ships, aircraft and load securing",
            Subject.LIFTING, "slings and lifting provisions",
            Subject.RACKS, "what is in racks: height units, masses, depths, air and power",
            Subject.STOWAGE, "where loose pieces ride, and what they bear beside them"));

    private static final List<String> ALWAYS = List.of(
            "Breakers, earthing and fault currents of the supplies; what walls and equipment store of heat.",
            "Deflection and vibration: bodies and units are taken as rigid, and walls as flat and square.",
            "Tolerances of manufacture: sizes are taken as entered.",
            "Curved, round and sloping shapes: every solid is a set of upright cuboids, every turn a quarter turn.",
            "Sway of liquids and of hanging loads, wind, and the dynamics of driving.");

    private NotModelled() {}

    /** Sentences, subjects without a single row first. */
    static List<String> of(Ledger ledger) {
        Set<Subject> there = EnumSet.noneOf(Subject.class);
        ledger.rows().stream().map(Row::subject).forEach(there::add);
        List<String> sentences = new ArrayList<>();
        for (Subject subject : Subject.values()) {
            String what = MEANING.getOrDefault(subject, LATER.getOrDefault(subject, ""));
            if (!there.contains(subject)) {
                sentences.add(subject.title() + ": " + what + ".");
            }
        }
        sentences.addAll(ALWAYS);
        return sentences;
    }
}
