/** The plan of the body on the desk, at true scale: the drawing of documents, with the same selection and dragging as the space. */
@NullMarked
package org.shelterwright.app.desk.plan;

import org.jspecify.annotations.NullMarked;
