package org.shelterwright.app.desk.space.solid;

import javafx.geometry.Point3D;
import javafx.scene.Group;
import javafx.scene.ParallelCamera;
import javafx.scene.PerspectiveCamera;
import javafx.scene.SceneAntialiasing;
import javafx.scene.SubScene;
import javafx.scene.transform.Affine;
import org.shelterwright.app.desk.space.eye.Eye;

/**
 * Brings a scene before the camera by the same figures with which the eye projects. The camera stays where the toolkit has it.
 */
final class Lens {
    /** Depth that is kept apart in a parallel view, before and behind the target (mm). */
    private static final double DEPTH = 60_000;

    /** The same in perspective (mm): less, since nearness costs fineness there. */
    private static final double AROUND = 16_000;

    private final Affine frame = new Affine();
    private final PerspectiveCamera perspective = new PerspectiveCamera(true);
    private final ParallelCamera parallel = new ParallelCamera();
    private final SubScene view;

    /** @param root of the scene (mm); it gets one transform more */
    Lens(Group root, Eye eye) {
        root.getTransforms().add(frame);
        view = new SubScene(root, eye.width(), eye.high(), true, SceneAntialiasing.BALANCED);
        view.setMouseTransparent(true);
        perspective.setFieldOfView(Eye.ANGLE);
    }

    SubScene view() {
        return view;
    }

    void aim(Eye from) {
        view.setWidth(from.width());
        view.setHeight(from.high());
        Point3D r = from.right();
        Point3D u = from.up().multiply(-1);
        Point3D f = from.towards().multiply(-1);
        Point3D t = from.target();
        if (from.perspective()) {
            double away = from.distance();
            perspective.setNearClip(Math.max(away * 0.05, away - AROUND));
            perspective.setFarClip(away + AROUND);
            set(r, u, f, t, 0, 0, away);
            view.setCamera(perspective);
        } else {
            double flat = 0.45 * Math.max(from.width(), from.high()) / DEPTH;
            set(
                    r.multiply(from.scale()),
                    u.multiply(from.scale()),
                    f.multiply(flat),
                    t,
                    from.width() / 2,
                    from.high() / 2,
                    0);
            view.setCamera(parallel);
        }
    }

    private void set(Point3D x, Point3D y, Point3D z, Point3D target, double dx, double dy, double dz) {
        frame.setToTransform(
                x.getX(),
                x.getY(),
                x.getZ(),
                dx - x.dotProduct(target),
                y.getX(),
                y.getY(),
                y.getZ(),
                dy - y.dotProduct(target),
                z.getX(),
                z.getY(),
                z.getZ(),
                dz - z.dotProduct(target));
    }
}
