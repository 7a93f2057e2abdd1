package org.shelterwright.catalog.plausible;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;

/** What is odd about a piece. The bounds are common practice: what goes into a unit is carried there by hand. */
public final class PieceOddities {
    private static final double ABSURD_DENSITY = 12_000;
    private static final double DENSE = 6_000;
    private static final double HEAVY_KG = 120;
    private static final int LONG = 3 * Lengths.M;
    private static final int ABSURDLY_THIN = Lengths.MM / 2;

    private PieceOddities() {}

    public static List<Oddity> of(Piece piece) {
        List<Oddity> found = new ArrayList<>();
        for (Axis axis : Axis.values()) {
            int length = piece.size().along(axis);
            String what = "The size " + axis.name().toLowerCase(Locale.ROOT) + " = " + Lengths.format(length)
                    + " mm of piece " + piece.id();
            if (length < ABSURDLY_THIN) {
                found.add(Oddity.absurd("size", what + " is below 0.5 mm. Lengths are in millimetres: correct it."));
            } else if (length > LONG) {
                found.add(Oddity.doubtful("size", what + " is above 3 m. Lengths are in millimetres: is it right?"));
            }
        }
        Double massKg = piece.mass().massKg();
        if (massKg != null && found.stream().noneMatch(Oddity::absurd)) {
            mass(piece, massKg, found);
        }
        Point centre = piece.mass().centre();
        if (centre != null && !piece.size().box().contains(centre)) {
            found.add(Oddity.doubtful(
                    "mass", "The centre of mass of piece " + piece.id() + " lies outside its size. Check it."));
        }
        return found;
    }

    private static void mass(Piece piece, double massKg, List<Oddity> found) {
        double density = massKg / piece.size().volumeM3();
        String what = String.format(
                Locale.ROOT,
                "The mass of %s kg of piece %s makes %.0f kg/m³ over its size",
                Double.toString(massKg).replaceAll("\\.0$", ""),
                piece.id(),
                density);
        if (density > ABSURD_DENSITY) {
            found.add(Oddity.absurd("mass", what + ", denser than lead. Correct the mass (kg) or the size (mm)."));
        } else if (density > DENSE) {
            found.add(Oddity.doubtful("mass", what + ", denser than most that is carried by hand. Is it right?"));
        } else if (massKg > HEAVY_KG) {
            found.add(Oddity.doubtful("mass", what + " and is above 120 kg. Is it right?"));
        }
    }
}
