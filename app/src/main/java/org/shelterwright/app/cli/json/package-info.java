/**
 * Results as JSON, for other programs; the shapes are described in the user guide and change only with their version.
 */
@NullMarked
package org.shelterwright.app.cli.json;

import org.jspecify.annotations.NullMarked;
