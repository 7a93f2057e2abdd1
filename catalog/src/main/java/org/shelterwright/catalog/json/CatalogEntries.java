package org.shelterwright.catalog.json;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.cable.ConductorTable;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.fastener.FastenerTable;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.plausible.BodyOddities;
import org.shelterwright.catalog.plausible.CableOddities;
import org.shelterwright.catalog.plausible.CarrierOddities;
import org.shelterwright.catalog.plausible.ItemOddities;
import org.shelterwright.catalog.plausible.Oddity;
import org.shelterwright.catalog.plausible.PieceOddities;
import org.shelterwright.catalog.plausible.TransitCarOddities;
import org.shelterwright.catalog.transit.FrictionTable;
import org.shelterwright.catalog.transit.LashingKind;
import org.shelterwright.catalog.transit.LineCategories;
import org.shelterwright.catalog.transit.Outline;
import org.shelterwright.catalog.transit.Transit;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.catalog.transit.WagonClasses;

/** Catalog entries read from files of any of the catalog's formats. */
public final class CatalogEntries {
    private final Kind<Item> items = new Kind<>("item", CatalogFormats.ITEM, Item::id, ItemOddities::of);
    private final Kind<Body> bodies = new Kind<>("body", CatalogFormats.BODY, Body::id, BodyOddities::of);
    private final Kind<Carrier> carriers =
            new Kind<>("carrier", CatalogFormats.CARRIER, Carrier::id, CarrierOddities::of);
    private final Kind<FastenerTable> fasteners =
            new Kind<>("fastener table", CatalogFormats.FASTENERS, FastenerTable::id, table -> List.of());
    private final Kind<Cable> cables = new Kind<>("cable", CatalogFormats.CABLE, Cable::id, CableOddities::of);
    private final Kind<ConductorTable> conductors =
            new Kind<>("conductor table", CatalogFormats.CONDUCTORS, ConductorTable::id, table -> List.of());
    private final Kind<Piece> pieces = new Kind<>("piece", CatalogFormats.PIECE, Piece::id, PieceOddities::of);
    private final Kind<TransitCar> cars =
            new Kind<>("transit car", CatalogFormats.TRANSIT_CAR, TransitCar::id, TransitCarOddities::of);
    private final Kind<Outline> outlines =
            new Kind<>("outline", CatalogFormats.OUTLINE, Outline::id, outline -> List.of());
    private final Kind<LashingKind> lashings =
            new Kind<>("lashing", CatalogFormats.LASHING, LashingKind::id, lashing -> List.of());
    private final Kind<LineCategories> lineCategories = new Kind<>(
            "table of line categories", CatalogFormats.LINE_CATEGORIES, LineCategories::id, table -> List.of());
    private final Kind<FrictionTable> frictions =
            new Kind<>("table of friction", CatalogFormats.FRICTION, FrictionTable::id, table -> List.of());
    private final Kind<WagonClasses> wagonClasses =
            new Kind<>("table of wagon classes", CatalogFormats.WAGON_CLASSES, WagonClasses::id, table -> List.of());
    private final List<Problem> problems = new ArrayList<>();
    private final List<Problem> doubts = new ArrayList<>();

    private CatalogEntries() {}

    /**
     * Reads files, each by the format that it names.
     *
     * @throws InputException with the problems of all files, if any has one or two give the same id
     */
    public static CatalogEntries read(Collection<InputFile> files) {
        CatalogEntries entries = new CatalogEntries();
        files.forEach(entries::add);
        if (!entries.problems.isEmpty()) {
            throw new InputException(entries.problems);
        }
        return entries;
    }

    public Collection<Item> items() {
        return items.entries.values();
    }

    public Collection<Body> bodies() {
        return bodies.entries.values();
    }

    public Collection<Carrier> carriers() {
        return carriers.entries.values();
    }

    public Collection<FastenerTable> fasteners() {
        return fasteners.entries.values();
    }

    public Collection<Cable> cables() {
        return cables.entries.values();
    }

    public Collection<ConductorTable> conductors() {
        return conductors.entries.values();
    }

    public Collection<Piece> pieces() {
        return pieces.entries.values();
    }

    /** Cars, outlines and tables for planning legs. */
    public Transit transit() {
        return new Transit(
                List.copyOf(cars.entries.values()),
                List.copyOf(outlines.entries.values()),
                List.copyOf(lashings.entries.values()),
                List.copyOf(lineCategories.entries.values()),
                List.copyOf(frictions.entries.values()),
                List.copyOf(wagonClasses.entries.values()));
    }

    /** Figures that a person should look at; the entries are there all the same. */
    public List<Problem> doubts() {
        return Collections.unmodifiableList(doubts);
    }

    /** These entries alone. */
    public Catalog catalog() {
        return Catalog.of(items(), bodies(), carriers(), cables(), pieces(), transit());
    }

    /** These entries over those of a catalog: one with the same id takes the place of the old one. */
    public Catalog over(Catalog base) {
        return Catalog.of(
                items.over(base.items()),
                bodies.over(base.bodies()),
                carriers.over(base.carriers()),
                cables.over(base.cables()),
                pieces.over(base.pieces()),
                transit().over(base.transit()));
    }

    private void add(InputFile file) {
        try {
            FileHead head = FileHead.read(file);
            List<Kind<?>> kinds = List.of(
                    items,
                    bodies,
                    carriers,
                    fasteners,
                    cables,
                    conductors,
                    pieces,
                    cars,
                    outlines,
                    lashings,
                    lineCategories,
                    frictions,
                    wagonClasses);
            kinds.stream()
                    .filter(kind -> kind.format.name().equals(head.format()))
                    .findFirst()
                    .orElseThrow(() -> notOfTheCatalog(
                            head, kinds.stream().map(kind -> kind.format.name()).toList()))
                    .add(head, this);
        } catch (InputException e) {
            problems.addAll(e.problems());
        }
    }

    private static InputException notOfTheCatalog(FileHead head, List<String> known) {
        return new InputException(
                head.spots().format(),
                "This is a " + Texts.quoted(head.format()) + " file, which is no catalog entry."
                        + NearestName.hint(head.format(), known) + " Correct it or move the file elsewhere.");
    }

    private static final class Kind<T> {
        private final String name;
        private final JsonFormat<T> format;
        private final Function<T, String> id;
        private final Function<T, List<Oddity>> oddities;
        private final Map<String, T> entries = new LinkedHashMap<>();
        private final Map<String, String> places = new LinkedHashMap<>();

        Kind(String name, JsonFormat<T> format, Function<T, String> id, Function<T, List<Oddity>> oddities) {
            this.name = name;
            this.format = format;
            this.id = id;
            this.oddities = oddities;
        }

        void add(FileHead head, CatalogEntries all) {
            Sourced<T> read = format.open(head);
            for (Oddity oddity : oddities.apply(read.value())) {
                (oddity.absurd() ? all.problems : all.doubts)
                        .add(new Problem(read.places().key(oddity.key()).text(), oddity.sentence()));
            }
            String key = id.apply(read.value());
            String place = read.places().key("id").text();
            String first = places.putIfAbsent(key, place);
            if (first != null) {
                all.problems.add(new Problem(
                        place,
                        "The " + name + " id \"" + key + "\" is already given in " + first
                                + ". Rename or remove one of them."));
            } else {
                entries.put(key, read.value());
            }
        }

        Collection<T> over(Collection<T> base) {
            Map<String, T> merged = new LinkedHashMap<>();
            base.forEach(entry -> merged.put(id.apply(entry), entry));
            merged.putAll(entries);
            return merged.values();
        }
    }
}
