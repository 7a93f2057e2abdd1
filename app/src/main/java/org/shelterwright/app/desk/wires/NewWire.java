package org.shelterwright.app.desk.wires;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.shelterwright.catalog.body.EntryPanel;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.item.Port;
import org.shelterwright.layouts.brief.TrailerLoad;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.cable.WireEnd;
import org.shelterwright.layouts.edit.SetWires;
import org.shelterwright.layouts.scene.Scene;

/** Makes a wire of what was typed, or says in one sentence what is wrong with it. */
final class NewWire {
    private NewWire() {}

    /** Every end that a wire may have, such as "rack-1/power", in the order of the brief, entry panels last. */
    static List<String> ends(Scene scene) {
        List<String> ends = new ArrayList<>();
        for (UnitSpec unit : scene.brief().units()) {
            ends.addAll(ends(scene, unit));
        }
        var trailer = scene.brief().trailer();
        if (trailer != null) {
            for (TrailerLoad load : trailer.loads()) {
                ends.addAll(ends(scene, load.unit()));
            }
        }
        for (EntryPanel panel : scene.body().entryPanels()) {
            ends.add("body/" + panel.name());
        }
        return ends;
    }

    /** The ends to choose from where something is typed already: first those of the unit that it names, then all others. */
    static List<String> ends(Scene scene, String typed) {
        String owner = WireEnd.owner(typed.strip());
        List<String> first = new ArrayList<>(ends(scene));
        first.removeIf(end -> !WireEnd.owner(end).equals(owner));
        List<String> all = new ArrayList<>(ends(scene));
        all.removeAll(first);
        all.addAll(0, first);
        return all;
    }

    /** The cables that fit both ends, so far as they are known; by id. */
    static List<String> cables(Scene scene, Collection<Cable> cables, String from, String to) {
        List<Port> ports =
                Stream.of(from, to).flatMap(end -> port(scene, end).stream()).toList();
        return cables.stream()
                .filter(cable -> ports.stream().allMatch(cable::fits))
                .map(Cable::id)
                .toList();
    }

    /** Both ends of a wire. */
    record Ends(String from, String to) {}

    /**
     * The ends that are most likely meant where a wire begins at a port and ends at a unit: a cable fits both, no wire ends there yet,
     * and the first end stays as it is, each if it can be.
     */
    static Ends likely(Scene scene, Collection<Cable> cables, String from, List<String> ports) {
        List<String> begins = new ArrayList<>(List.of(from.strip()));
        ends(scene).stream()
                .filter(end -> WireEnd.owner(end).equals(WireEnd.owner(from)) && !begins.contains(end))
                .forEach(begins::add);
        Set<String> taken = new HashSet<>();
        scene.brief().wires().forEach(wire -> taken.addAll(List.of(wire.from(), wire.to())));
        return begins.stream()
                .flatMap(begin -> ports.stream().map(port -> new Ends(begin, port)))
                .min(Comparator.comparing((Ends ends) ->
                                cables(scene, cables, ends.from, ends.to).isEmpty())
                        .thenComparing(ends -> !ends.from.equals(begins.get(0)))
                        .thenComparing(ends -> taken.contains(ends.to)))
                .orElseThrow();
    }

    private static Optional<Port> port(Scene scene, String end) {
        return WireEnd.of(scene, end.strip()).flatMap(one -> Optional.ofNullable(one.port()));
    }

    /** The ends at one unit. */
    static List<String> ends(Scene scene, UnitSpec unit) {
        return scene.layout().item(unit).ports().stream()
                .map(port -> unit.id() + "/" + port.name())
                .toList();
    }

    /**
     * The step that adds a wire.
     *
     * @param cables those that can be had
     * @throws IllegalArgumentException with a sentence that says what is wrong, where, and what to do
     */
    static SetWires of(Scene scene, Collection<Cable> cables, String from, String to, String cable) {
        WireEnd a = end(scene, "From", from.strip());
        WireEnd b = end(scene, "To", to.strip());
        Cable held = cables.stream()
                .filter(one -> one.id().equals(cable.strip()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        cable.isBlank()
                                ? "Cable is empty. Choose the cable of the wire."
                                : "Cable: there is no cable \"" + cable.strip()
                                        + "\" in the catalog. Choose one of the list."));
        Wire wire = new Wire(id(scene), from.strip(), to.strip(), held.id(), null);
        for (WireEnd end : List.of(a, b)) {
            Port port = end.port();
            if (port != null && port.cableClass() != held.cableClass()) {
                throw new IllegalArgumentException("Cable: " + held.name() + " is of class "
                        + word(held.cableClass().name())
                        + ", but " + end.name() + " takes "
                        + word(port.cableClass().name())
                        + ". Choose a cable of that class, or another port.");
            }
        }
        List<Wire> wires = new ArrayList<>(scene.brief().wires());
        wires.add(wire);
        return new SetWires(wires, List.of(held));
    }

    private static String word(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static WireEnd end(Scene scene, String field, String text) {
        if (text.isEmpty()) {
            throw new IllegalArgumentException(
                    field + " is empty. Give a unit and its port, such as " + example(scene) + ".");
        }
        return WireEnd.of(scene, text).orElseThrow(() -> new IllegalArgumentException(unknown(scene, field, text)));
    }

    private static String unknown(Scene scene, String field, String text) {
        String owner = WireEnd.owner(text);
        List<String> there = ends(scene).stream()
                .filter(end -> WireEnd.owner(end).equals(owner))
                .toList();
        return there.isEmpty()
                ? field + ": nothing with ports is called \"" + (owner.isEmpty() ? text : owner)
                        + "\". Give a unit and its port, such as " + example(scene) + "."
                : field + ": \"" + owner + "\" has no port \"" + text.substring(owner.length() + 1) + "\". It has: "
                        + String.join(", ", there) + ".";
    }

    private static String example(Scene scene) {
        return ends(scene).stream().findFirst().orElse("rack-1/power");
    }

    private static String id(Scene scene) {
        Set<String> taken = new HashSet<>();
        scene.brief().wires().forEach(wire -> taken.add(wire.id()));
        return Stream.iterate(1, i -> i + 1)
                .map(i -> "w" + i)
                .filter(id -> !taken.contains(id))
                .findFirst()
                .orElseThrow();
    }
}
