package org.shelterwright.app.desk.space.solid;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;
import org.shelterwright.app.drawing.Colour;

/**
 * All colours of the scene as cells of one picture, so that a mesh of many colours is one mesh. A coat wears the same
 * cells in other colours: those of the theme, of what is selected, of x-ray. Under ambient light alone, what is on the
 * screen is the colour itself.
 */
final class Palette {
    private static final int CELLS = 16;
    private static final int SIZE = 4;

    private final Map<Colour, Integer> cells = new LinkedHashMap<>();
    private final List<Coat> coats = new ArrayList<>();

    /** One way in which all cells are worn. */
    static final class Coat {
        private final Function<Colour, Color> worn;
        private final PhongMaterial material = new PhongMaterial(Color.WHITE);

        private Coat(Function<Colour, Color> worn) {
            this.worn = worn;
            material.setSpecularColor(Color.TRANSPARENT);
        }

        PhongMaterial material() {
            return material;
        }
    }

    Coat coat(Function<Colour, Color> worn) {
        Coat coat = new Coat(worn);
        coats.add(coat);
        paint(coat);
        return coat;
    }

    /** The cell of a colour, which it gets when it is first asked for. */
    int cell(Colour colour) {
        Integer known = cells.get(colour);
        if (known != null) {
            return known;
        }
        if (cells.size() == CELLS * CELLS) {
            throw new IllegalStateException("A scene has at most " + CELLS * CELLS + " colours.");
        }
        cells.put(colour, cells.size());
        coats.forEach(this::paint);
        return cells.size() - 1;
    }

    /** Paints all coats again, after a change of the theme. */
    void paint() {
        coats.forEach(this::paint);
    }

    /** Places of the cells in the picture, two figures a cell. */
    static float[] places() {
        float[] places = new float[2 * CELLS * CELLS];
        for (int i = 0; i < CELLS * CELLS; i++) {
            places[2 * i] = (i % CELLS + 0.5f) / CELLS;
            places[2 * i + 1] = (i / CELLS + 0.5f) / CELLS;
        }
        return places;
    }

    private void paint(Coat coat) {
        WritableImage image = new WritableImage(CELLS * SIZE, CELLS * SIZE);
        cells.forEach((colour, cell) -> {
            Color color = coat.worn.apply(colour);
            for (int i = 0; i < SIZE * SIZE; i++) {
                image.getPixelWriter().setColor(cell % CELLS * SIZE + i % SIZE, cell / CELLS * SIZE + i / SIZE, color);
            }
        });
        coat.material.setDiffuseMap(image);
    }
}
