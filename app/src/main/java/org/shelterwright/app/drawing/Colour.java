package org.shelterwright.app.drawing;

/**
 * A colour.
 *
 * @param rgb red, green and blue, eight bits each
 * @param opacity from 0 to 1
 */
public record Colour(int rgb, double opacity) {

    public static final Colour BLACK = of(0x000000);
    public static final Colour WHITE = of(0xFFFFFF);

    public static Colour of(int rgb) {
        return new Colour(rgb, 1);
    }

    public Colour with(double otherOpacity) {
        return new Colour(rgb, otherOpacity);
    }

    /** This colour with a share of another mixed in. */
    public Colour mixed(Colour other, double share) {
        return new Colour(channel(other, share, 16) | channel(other, share, 8) | channel(other, share, 0), opacity);
    }

    private int channel(Colour other, double share, int shift) {
        int mine = rgb >> shift & 0xFF;
        int theirs = other.rgb >> shift & 0xFF;
        return (int) Math.round(mine + (theirs - mine) * share) << shift;
    }
}
