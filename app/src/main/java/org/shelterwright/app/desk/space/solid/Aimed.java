package org.shelterwright.app.desk.space.solid;

import javafx.scene.SubScene;
import org.shelterwright.app.desk.space.eye.Eye;

/** A scene of solids that can be looked at from anywhere. */
public interface Aimed {
    SubScene view();

    /** Looks from another place. Cost: linear in all lines. */
    void aim(Eye from);
}
