package org.shelterwright.layouts.transport;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.space.Millimetres;
import org.shelterwright.catalog.transit.CategoryLoad;
import org.shelterwright.catalog.transit.Doorway;
import org.shelterwright.catalog.transit.FloorRating;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.catalog.transit.WheelGroup;

/** A car like another, but for what a test changes. */
public final class CarBuilder {
    private final TransitCar like;
    private String id;
    private @Nullable @Millimetres Integer lengthOver;
    private List<WheelGroup> wheels;
    private @Nullable Double payloadKg;
    private List<CategoryLoad> loadLimits;
    private FloorRating floor;
    private List<Doorway> doorways;

    private CarBuilder(TransitCar like) {
        this.like = like;
        id = like.id();
        lengthOver = like.lengthOver();
        wheels = like.wheels();
        payloadKg = like.payloadKg();
        loadLimits = like.loadLimits();
        floor = like.floor();
        doorways = like.doorways();
    }

    public static CarBuilder like(TransitCar car) {
        return new CarBuilder(car);
    }

    /** Like a built-in one, under a name of its own. */
    public static CarBuilder like(String car) {
        TransitCar found = BuiltInCatalog.entries().transit().cars().stream()
                .filter(one -> one.id().equals(car))
                .findFirst()
                .orElseThrow();
        CarBuilder builder = new CarBuilder(found);
        builder.id = "like-" + car;
        return builder;
    }

    public CarBuilder lengthOver(@Nullable @Millimetres Integer other) {
        lengthOver = other;
        return this;
    }

    public CarBuilder wheels(List<WheelGroup> others) {
        wheels = others;
        return this;
    }

    public CarBuilder payloadKg(@Nullable Double other) {
        payloadKg = other;
        return this;
    }

    public CarBuilder loadLimits(List<CategoryLoad> others) {
        loadLimits = others;
        return this;
    }

    public CarBuilder floor(FloorRating other) {
        floor = other;
        return this;
    }

    public CarBuilder doorways(List<Doorway> others) {
        doorways = others;
        return this;
    }

    public TransitCar build() {
        return new TransitCar(
                id,
                like.name(),
                like.kind(),
                null,
                like.deck(),
                lengthOver,
                like.outside(),
                wheels,
                like.tareKg(),
                like.tareCentreHeight(),
                null,
                payloadKg,
                loadLimits,
                floor,
                doorways,
                like.anchorRows(),
                like.chockRails(),
                like.stops(),
                like.seats(),
                like.source(),
                null);
    }
}
