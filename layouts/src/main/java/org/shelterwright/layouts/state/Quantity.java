package org.shelterwright.layouts.state;

/**
 * A quantity that is a sum over all masses: what a kilogram adds to it, wherever it is held.
 *
 * @param body influence of what the filled body holds, for places in the frame of the body
 * @param carrier influence of tanks and crew of the carrier, in the frame of the carrier
 * @param trailer influence of tanks and loads of the trailer, in the frame of the trailer
 * @param carrierTare what the empty carrier adds
 * @param trailerTare what the empty trailer adds when it is coupled
 */
public record Quantity(Influence body, Influence carrier, Influence trailer, double carrierTare, double trailerTare) {
    /** A quantity of the filled body alone. */
    public static Quantity ofBody(Influence body) {
        return new Quantity(body, Influence.NONE, Influence.NONE, 0, 0);
    }

    public Quantity times(double factor) {
        return new Quantity(
                body.times(factor),
                carrier.times(factor),
                trailer.times(factor),
                factor * carrierTare,
                factor * trailerTare);
    }

    public Quantity plus(Quantity other) {
        return new Quantity(
                body.plus(other.body),
                carrier.plus(other.carrier),
                trailer.plus(other.trailer),
                carrierTare + other.carrierTare,
                trailerTare + other.trailerTare);
    }

    public Quantity minus(Quantity other) {
        return plus(other.times(-1));
    }

    Influence of(Holder holder) {
        return switch (holder) {
            case BODY -> body;
            case CARRIER -> carrier;
            case TRAILER -> trailer;
        };
    }

    double tare(Mode mode) {
        return carrierTare + (mode.trailer() ? trailerTare : 0);
    }

    boolean usesTrailer() {
        return !trailer.none() || trailerTare != 0;
    }
}
