/**
 * Writes a layout as a glTF 2.0 model.
 */
@NullMarked
package org.shelterwright.app.gltf;

import org.jspecify.annotations.NullMarked;
