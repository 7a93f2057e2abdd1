package org.shelterwright.app.desk;

import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/**
 * Writes pictures of windows as small files for the guide: the 256 colours that are there most often, every other pixel in the
 * nearest of them. Flat grounds, lines and most of the text keep their exact colour. The same picture gives the same bytes.
 */
public final class FewColours {
    private static final int COLOURS = 256;

    private FewColours() {}

    /** Writes a picture as PNG. */
    public static Path write(BufferedImage picture, Path file) {
        Map<Integer, Integer> counts = new HashMap<>();
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                counts.merge(picture.getRGB(x, y) & 0xFFFFFF, 1, Integer::sum);
            }
        }
        int[] palette = counts.entrySet().stream()
                .sorted(Comparator.comparing((Map.Entry<Integer, Integer> one) -> -one.getValue())
                        .thenComparing(Map.Entry::getKey))
                .limit(COLOURS)
                .mapToInt(Map.Entry::getKey)
                .toArray();
        Map<Integer, Integer> places = new HashMap<>();
        IndexColorModel colours = new IndexColorModel(8, palette.length, palette, 0, false, -1, DataBuffer.TYPE_BYTE);
        BufferedImage few =
                new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_BYTE_INDEXED, colours);
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                int place = places.computeIfAbsent(picture.getRGB(x, y) & 0xFFFFFF, rgb -> nearest(palette, rgb));
                few.getRaster().setSample(x, y, 0, place);
            }
        }
        return save(few, file);
    }

    private static int nearest(int[] palette, int rgb) {
        int best = 0;
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < palette.length; i++) {
            int red = (palette[i] >> 16 & 255) - (rgb >> 16 & 255);
            int green = (palette[i] >> 8 & 255) - (rgb >> 8 & 255);
            int blue = (palette[i] & 255) - (rgb & 255);
            int way = 2 * red * red + 4 * green * green + blue * blue;
            if (way < least) {
                least = way;
                best = i;
            }
        }
        return best;
    }

    private static Path save(BufferedImage picture, Path file) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ImageWriteParam tight = writer.getDefaultWriteParam();
        tight.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        tight.setCompressionQuality(0);
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            Files.deleteIfExists(file);
            try (ImageOutputStream out = ImageIO.createImageOutputStream(file.toFile())) {
                writer.setOutput(out);
                writer.write(null, new IIOImage(picture, List.of(), null), tight);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return file;
    }
}
