package org.shelterwright.app.drawing;

/** A place on paper (mm), x to the right and y down. */
public record Spot(double x, double y) {

    public Spot plus(double dx, double dy) {
        return new Spot(x + dx, y + dy);
    }

    public double distance(Spot other) {
        return Math.hypot(x - other.x, y - other.y);
    }

    /** The place that lies a share of the way to another. */
    public Spot towards(Spot other, double share) {
        return new Spot(x + (other.x - x) * share, y + (other.y - y) * share);
    }
}
