package org.shelterwright.catalog.json;

import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.cable.ConductorTable;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.fastener.FastenerTable;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.transit.FrictionTable;
import org.shelterwright.catalog.transit.LashingKind;
import org.shelterwright.catalog.transit.LineCategories;
import org.shelterwright.catalog.transit.Outline;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.catalog.transit.WagonClasses;

/** The file formats of catalog entries. */
public final class CatalogFormats {
    public static final JsonFormat<Item> ITEM = JsonFormat.of("shelterwright-item", 1, Item.class);
    public static final JsonFormat<Body> BODY = JsonFormat.of("shelterwright-body", 1, Body.class);
    public static final JsonFormat<Carrier> CARRIER = JsonFormat.of("shelterwright-carrier", 1, Carrier.class);
    public static final JsonFormat<FastenerTable> FASTENERS =
            JsonFormat.of("shelterwright-fasteners", 1, FastenerTable.class);
    public static final JsonFormat<Cable> CABLE = JsonFormat.of("shelterwright-cable", 1, Cable.class);
    public static final JsonFormat<ConductorTable> CONDUCTORS =
            JsonFormat.of("shelterwright-conductors", 1, ConductorTable.class);
    public static final JsonFormat<Piece> PIECE = JsonFormat.of("shelterwright-piece", 1, Piece.class);
    public static final JsonFormat<TransitCar> TRANSIT_CAR =
            JsonFormat.of("shelterwright-transit-car", 1, TransitCar.class);
    public static final JsonFormat<Outline> OUTLINE = JsonFormat.of("shelterwright-outline", 1, Outline.class);
    public static final JsonFormat<LashingKind> LASHING = JsonFormat.of("shelterwright-lashing", 1, LashingKind.class);
    public static final JsonFormat<LineCategories> LINE_CATEGORIES =
            JsonFormat.of("shelterwright-line-categories", 1, LineCategories.class);
    public static final JsonFormat<FrictionTable> FRICTION =
            JsonFormat.of("shelterwright-friction", 1, FrictionTable.class);
    public static final JsonFormat<WagonClasses> WAGON_CLASSES =
            JsonFormat.of("shelterwright-wagon-classes", 1, WagonClasses.class);

    private CatalogFormats() {}
}
