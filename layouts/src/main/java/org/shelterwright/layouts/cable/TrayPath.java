package org.shelterwright.layouts.cable;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.body.Tray;
import org.shelterwright.catalog.space.Point;

/** Places along the centre line of a tray, measured from its first point (µm). */
public final class TrayPath {
    private final Tray tray;
    private final int[] starts;

    public TrayPath(Tray tray) {
        this.tray = tray;
        starts = new int[tray.path().size()];
        for (int i = 1; i < starts.length; i++) {
            starts[i] = starts[i - 1]
                    + Bends.distance(tray.path().get(i - 1), tray.path().get(i));
        }
    }

    public Tray tray() {
        return tray;
    }

    public int length() {
        return starts[starts.length - 1];
    }

    /** Where a point lies along the tray; -1 if it does not lie on its centre line. */
    public int stationOf(Point point) {
        List<Point> path = tray.path();
        for (int i = 1; i < path.size(); i++) {
            if (between(path.get(i - 1), path.get(i), point)) {
                return starts[i - 1] + Bends.distance(path.get(i - 1), point);
            }
        }
        return -1;
    }

    /** The points from one station to another, corners included. */
    public List<Point> between(int from, int to) {
        List<Point> points = new ArrayList<>();
        points.add(at(from));
        if (from < to) {
            for (int i = 0; i < starts.length; i++) {
                if (starts[i] > from && starts[i] < to) {
                    points.add(tray.path().get(i));
                }
            }
        } else {
            for (int i = starts.length - 1; i >= 0; i--) {
                if (starts[i] < from && starts[i] > to) {
                    points.add(tray.path().get(i));
                }
            }
        }
        points.add(at(to));
        return points;
    }

    /** The point at a station. */
    public Point at(int station) {
        int i = 1;
        while (i < starts.length - 1 && starts[i] < station) {
            i++;
        }
        Point a = tray.path().get(i - 1);
        Point b = tray.path().get(i);
        int along = station - starts[i - 1];
        return new Point(
                a.x() + Integer.signum(b.x() - a.x()) * along,
                a.y() + Integer.signum(b.y() - a.y()) * along,
                a.z() + Integer.signum(b.z() - a.z()) * along);
    }

    /** What a cable takes over a stretch of the tray (µm): the stretch itself, or its share of the length that is stated. */
    public long cableLength(int stretch) {
        Integer stated = tray.length();
        return stated == null ? stretch : Math.round((double) stretch * stated / length());
    }

    private static boolean between(Point a, Point b, Point p) {
        return Math.min(a.x(), b.x()) <= p.x()
                && p.x() <= Math.max(a.x(), b.x())
                && Math.min(a.y(), b.y()) <= p.y()
                && p.y() <= Math.max(a.y(), b.y())
                && Math.min(a.z(), b.z()) <= p.z()
                && p.z() <= Math.max(a.z(), b.z());
    }
}
