package org.shelterwright.catalog.item;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;

/** Makes an item of those of its parts that are stated, or a copy of one in which some differ. What they mean says {@link Item}. */
public final class ItemBuilder {
    private String id;
    private String name;
    private ItemKind kind;
    private Material material;
    private Size size;
    private List<Solid> solids = List.of();
    private List<ClearZone> zones = List.of();
    private List<MovablePart> movableParts = List.of();
    private List<Fixing> fixings = List.of();
    private Mounting mounting;
    private Set<QuarterTurn> turns = Set.of();
    private MassData mass;
    private List<ContactPatch> patches = List.of();
    private List<Support> supports = List.of();
    private @Nullable Double stackingKg;
    private List<Port> ports = List.of();
    private @Nullable Power power;
    private @Nullable Plant plant;
    private List<Stowage> stowages = List.of();
    private List<Tank> tanks = List.of();
    private @Nullable Interior interior;
    private @Nullable Bringing bringing;
    private @Nullable String note;

    ItemBuilder(String id, String name, ItemKind kind, Material material, Size size, Mounting mounting, MassData mass) {
        this.id = id;
        this.name = name;
        this.kind = kind;
        this.material = material;
        this.size = size;
        this.mounting = mounting;
        this.mass = mass;
    }

    ItemBuilder(Item like) {
        this(like.id(), like.name(), like.kind(), like.material(), like.size(), like.mounting(), like.mass());
        solids = like.solids();
        zones = like.zones();
        movableParts = like.movableParts();
        fixings = like.fixings();
        turns = like.turns();
        patches = like.patches();
        supports = like.supports();
        stackingKg = like.stackingKg();
        ports = like.ports();
        power = like.power();
        plant = like.plant();
        stowages = like.stowages();
        tanks = like.tanks();
        interior = like.interior();
        bringing = like.bringing();
        note = like.note();
    }

    public ItemBuilder id(String other) {
        id = other;
        return this;
    }

    public ItemBuilder name(String other) {
        name = other;
        return this;
    }

    public ItemBuilder kind(ItemKind other) {
        kind = other;
        return this;
    }

    public ItemBuilder material(Material other) {
        material = other;
        return this;
    }

    public ItemBuilder size(Size other) {
        size = other;
        return this;
    }

    public ItemBuilder solids(List<Solid> other) {
        solids = other;
        return this;
    }

    public ItemBuilder zones(List<ClearZone> other) {
        zones = other;
        return this;
    }

    public ItemBuilder movableParts(List<MovablePart> other) {
        movableParts = other;
        return this;
    }

    public ItemBuilder fixings(List<Fixing> other) {
        fixings = other;
        return this;
    }

    public ItemBuilder mounting(Mounting other) {
        mounting = other;
        return this;
    }

    public ItemBuilder turns(Set<QuarterTurn> other) {
        turns = other;
        return this;
    }

    public ItemBuilder mass(MassData other) {
        mass = other;
        return this;
    }

    public ItemBuilder patches(List<ContactPatch> other) {
        patches = other;
        return this;
    }

    public ItemBuilder supports(List<Support> other) {
        supports = other;
        return this;
    }

    public ItemBuilder stackingKg(@Nullable Double other) {
        stackingKg = other;
        return this;
    }

    public ItemBuilder ports(List<Port> other) {
        ports = other;
        return this;
    }

    public ItemBuilder power(@Nullable Power other) {
        power = other;
        return this;
    }

    public ItemBuilder plant(@Nullable Plant other) {
        plant = other;
        return this;
    }

    public ItemBuilder stowages(List<Stowage> other) {
        stowages = other;
        return this;
    }

    public ItemBuilder tanks(List<Tank> other) {
        tanks = other;
        return this;
    }

    public ItemBuilder interior(@Nullable Interior other) {
        interior = other;
        return this;
    }

    public ItemBuilder bringing(@Nullable Bringing other) {
        bringing = other;
        return this;
    }

    public ItemBuilder note(@Nullable String other) {
        note = other;
        return this;
    }

    /**
     * Makes the item.
     *
     * @throws IllegalArgumentException if its parts do not go together, such as a solid that reaches beyond its size
     */
    public Item build() {
        return new Item(
                id,
                name,
                kind,
                material,
                size,
                solids,
                zones,
                movableParts,
                fixings,
                mounting,
                turns,
                mass,
                patches,
                supports,
                stackingKg,
                ports,
                power,
                plant,
                stowages,
                tanks,
                interior,
                bringing,
                note);
    }
}
