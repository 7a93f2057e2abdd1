package org.shelterwright.app.pdf;

import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.shelterwright.app.drawing.Bounds;

/** Reads the bounds of all filled paths of a page, in points. */
public final class FilledPaths extends PDFGraphicsStreamEngine {

    private final List<Bounds> filled = new ArrayList<>();
    private final GeneralPath path = new GeneralPath();

    private FilledPaths(PDPage page) {
        super(page);
    }

    public static List<Bounds> on(PDPage page) throws IOException {
        FilledPaths reader = new FilledPaths(page);
        reader.processPage(page);
        return reader.filled;
    }

    private void fill() {
        Rectangle2D b = path.getBounds2D();
        filled.add(new Bounds(b.getMinX(), b.getMinY(), b.getMaxX(), b.getMaxY()));
        path.reset();
    }

    @Override
    public void fillPath(int windingRule) {
        fill();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        fill();
    }

    @Override
    public void strokePath() {
        path.reset();
    }

    @Override
    public void endPath() {
        path.reset();
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        path.closePath();
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        path.append(new Rectangle2D.Double(p0.getX(), p0.getY(), p2.getX() - p0.getX(), p2.getY() - p0.getY()), false);
    }

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void clip(int windingRule) {}

    @Override
    public void shadingFill(COSName name) {}
}
