package org.shelterwright.app.desk.item;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.ClearZone;
import org.shelterwright.catalog.item.Fixing;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Mounting;
import org.shelterwright.catalog.item.Solid;
import org.shelterwright.catalog.plausible.ItemOddities;
import org.shelterwright.catalog.plausible.Oddity;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Size;

/**
 * What comes of what is typed of an item: the item, or what is wrong, in the sentences of the catalog.
 *
 * @param item empty if something is wrong
 * @param faults by place: the id of a figure, "surfaces", "turns", or a list with its number such as "zones-0"
 * @param doubts what a person should look at again; it stops nothing
 */
public record ItemReading(Optional<Item> item, Map<String, String> faults, List<String> doubts) {
    public ItemReading {
        faults = Collections.unmodifiableMap(new LinkedHashMap<>(faults));
        doubts = List.copyOf(doubts);
    }

    public static ItemReading of(ItemDraft draft) {
        return new Reader(draft).read();
    }

    /** What is wrong at a place. */
    public Optional<String> fault(String place) {
        return Optional.ofNullable(faults.get(place));
    }

    private static final class Reader {
        private final ItemDraft draft;
        private final Typed typed = new Typed();
        private final Map<String, String> faults = new LinkedHashMap<>();

        Reader(ItemDraft draft) {
            this.draft = draft;
        }

        ItemReading read() {
            String name = draft.text(Figure.NAME);
            if (name.isEmpty()) {
                faults.put(Figure.NAME.id(), "An item needs a name.");
            }
            Size size = size();
            MassData mass = mass();
            Mounting mounting = mounting();
            if (draft.turns().isEmpty()) {
                faults.put("turns", "An item needs at least one turn in which it may stand.");
            }
            Double stacking = at(Figure.STACKING.id(), () -> typed.load(draft.text(Figure.STACKING)));
            List<Solid> solids =
                    lines("solids", draft.solids(), line -> new Solid(line.name(), box(line), line.presence()));
            List<ClearZone> zones = lines(
                    "zones",
                    draft.zones(),
                    line -> new ClearZone(line.name(), line.purpose(), box(line), line.presence()));
            List<Fixing> fixings = lines("fixings", draft.fixings(), this::fixing);
            if (!faults.isEmpty() || size == null || mass == null || mounting == null) {
                return new ItemReading(Optional.empty(), faults, List.of());
            }
            String place = draft.solids().isEmpty() ? Figure.DEPTH.id() : "solids";
            Item item = at(place, () -> item(name, size, mass, mounting, stacking, solids, zones, fixings));
            return item == null ? new ItemReading(Optional.empty(), faults, List.of()) : judged(item);
        }

        private ItemReading judged(Item item) {
            List<String> doubts = new ArrayList<>();
            for (Oddity oddity : ItemOddities.of(item)) {
                if (oddity.absurd()) {
                    faults.putIfAbsent(place(oddity.key()), oddity.sentence());
                } else {
                    doubts.add(oddity.sentence());
                }
            }
            return new ItemReading(faults.isEmpty() ? Optional.of(item) : Optional.empty(), faults, doubts);
        }

        private static String place(String key) {
            return switch (key) {
                case "size" -> Figure.DEPTH.id();
                case "mass" -> Figure.MASS.id();
                default -> key;
            };
        }

        private @Nullable Size size() {
            Integer x = at(Figure.DEPTH.id(), () -> typed.extent(draft.text(Figure.DEPTH)));
            Integer y = at(Figure.WIDTH.id(), () -> typed.extent(draft.text(Figure.WIDTH)));
            Integer z = at(Figure.HEIGHT.id(), () -> typed.extent(draft.text(Figure.HEIGHT)));
            return x == null || y == null || z == null ? null : new Size(x, y, z);
        }

        /** Each figure is held against the catalog's bounds by itself, so that a sentence stands beside its own field. */
        private @Nullable MassData mass() {
            MassData base = draft.base().mass();
            Double kg = at(Figure.MASS.id(), () -> {
                Double value = typed.mass(draft.text(Figure.MASS));
                return new MassData(value, null, draft.basis(), null, null, null).massKg();
            });
            var centre = at(Figure.CENTRE.id(), () -> typed.pointOrNothing(draft.text(Figure.CENTRE)));
            Double uncertainty = at(Figure.UNCERTAINTY.id(), () -> {
                Double value = typed.mass(draft.text(Figure.UNCERTAINTY));
                return new MassData(null, null, draft.basis(), null, value, null).uncertaintyKg();
            });
            Double growth = at(Figure.GROWTH.id(), () -> {
                Double value = typed.share(draft.text(Figure.GROWTH));
                return new MassData(null, null, draft.basis(), value, null, null).growthShare();
            });
            return new MassData(kg, centre, draft.basis(), growth, uncertainty, base.centreUncertainty());
        }

        private @Nullable Mounting mounting() {
            Integer lowest = at(Figure.LOWEST.id(), () -> typed.lengthOrNothing(draft.text(Figure.LOWEST)));
            Integer highest = at(Figure.HIGHEST.id(), () -> typed.lengthOrNothing(draft.text(Figure.HIGHEST)));
            Double hold = draft.base().mounting().roadHoldN();
            at("surfaces", () -> new Mounting(draft.surfaces(), null, null, draft.loose(), hold));
            return faults.containsKey("surfaces")
                    ? null
                    : at(
                            Figure.HIGHEST.id(),
                            () -> new Mounting(draft.surfaces(), lowest, highest, draft.loose(), hold));
        }

        private Fixing fixing(Line.Bolt line) {
            if (line.thread().isBlank()) {
                throw new IllegalArgumentException("A fixing needs a thread, such as M10.");
            }
            Fixing before = draft.base().fixings().stream()
                    .filter(one -> one.name().equals(line.name()))
                    .findFirst()
                    .orElse(null);
            Box toolZone = before == null ? null : before.toolZone();
            Axis slot = before == null || before.slot() == line.face().axis() ? null : before.slot();
            String grade = line.grade().isBlank() ? null : line.grade();
            return new Fixing(line.name(), typed.point(line.at()), line.face(), line.thread(), grade, toolZone, slot);
        }

        private Box box(Line.Cuboid<?> line) {
            return Box.between(typed.point(line.from()), typed.point(line.to()));
        }

        private interface Maker<L, T> {
            T make(L line);
        }

        private <L extends Line, T> List<T> lines(String list, List<L> lines, Maker<L, T> maker) {
            List<T> made = new ArrayList<>();
            for (int i = 0; i < lines.size(); i++) {
                L line = lines.get(i);
                T one = at(list + "-" + i, () -> maker.make(line));
                if (one != null) {
                    made.add(one);
                }
            }
            return made;
        }

        private <T> @Nullable T at(String place, Supplier<@Nullable T> maker) {
            try {
                return maker.get();
            } catch (IllegalArgumentException wrong) {
                faults.putIfAbsent(place, String.valueOf(wrong.getMessage()));
                return null;
            }
        }

        private Item item(
                String name,
                Size size,
                MassData mass,
                Mounting mounting,
                @Nullable Double stacking,
                List<Solid> solids,
                List<ClearZone> zones,
                List<Fixing> fixings) {
            Item base = draft.base();
            String note = draft.text(Figure.NOTE);
            return base.but()
                    .name(name)
                    .kind(draft.kind())
                    .material(draft.material())
                    .size(size)
                    .solids(solids)
                    .zones(zones)
                    .fixings(fixings)
                    .mounting(mounting)
                    .turns(draft.turns())
                    .mass(mass)
                    .stackingKg(stacking)
                    .note(note.isEmpty() ? null : note)
                    .build();
        }
    }
}
