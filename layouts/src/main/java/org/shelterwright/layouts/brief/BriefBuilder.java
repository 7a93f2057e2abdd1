package org.shelterwright.layouts.brief;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Makes a brief of those of its parts that are stated, or a copy of one in which some differ. What they mean says {@link Brief}. */
public final class BriefBuilder {
    private final String id;
    private final String name;
    private String body;
    private @Nullable String carrier;
    private @Nullable Trailer trailer;
    private List<UnitSpec> units = List.of();
    private int crew;
    private List<Occupant> occupants = List.of();
    private List<Wish> wishes = List.of();
    private List<String> ruleSets = List.of();
    private Map<String, Double> limits = Map.of();
    private List<Wire> wires = List.of();
    private @Nullable Services services;
    private @Nullable Inventory inventory;
    private @Nullable String note;

    BriefBuilder(String id, String name, String body) {
        this.id = id;
        this.name = name;
        this.body = body;
    }

    BriefBuilder(Brief like) {
        this(like.id(), like.name(), like.body());
        carrier = like.carrier();
        trailer = like.trailer();
        units = like.units();
        crew = like.crew();
        occupants = like.occupants();
        wishes = like.wishes();
        ruleSets = like.ruleSets();
        limits = like.limits();
        wires = like.wires();
        services = like.services();
        inventory = like.inventory();
        note = like.note();
    }

    public BriefBuilder body(String other) {
        body = other;
        return this;
    }

    public BriefBuilder carrier(@Nullable String other) {
        carrier = other;
        return this;
    }

    public BriefBuilder trailer(@Nullable Trailer other) {
        trailer = other;
        return this;
    }

    public BriefBuilder units(List<UnitSpec> other) {
        units = other;
        return this;
    }

    public BriefBuilder crew(int other) {
        crew = other;
        return this;
    }

    public BriefBuilder occupants(List<Occupant> other) {
        occupants = other;
        return this;
    }

    public BriefBuilder wishes(List<Wish> other) {
        wishes = other;
        return this;
    }

    public BriefBuilder ruleSets(List<String> other) {
        ruleSets = other;
        return this;
    }

    public BriefBuilder limits(Map<String, Double> other) {
        limits = other;
        return this;
    }

    public BriefBuilder wires(List<Wire> other) {
        wires = other;
        return this;
    }

    public BriefBuilder services(@Nullable Services other) {
        services = other;
        return this;
    }

    public BriefBuilder inventory(@Nullable Inventory other) {
        inventory = other;
        return this;
    }

    public BriefBuilder note(@Nullable String other) {
        note = other;
        return this;
    }

    public Brief build() {
        return new Brief(
                id, name, body, carrier, trailer, units, crew, occupants, wishes, ruleSets, limits, wires, services,
                inventory, note);
    }
}
