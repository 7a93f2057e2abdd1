/** One item in a form: what is typed of it, what comes of it or is wrong with it, and its picture. */
@NullMarked
package org.shelterwright.app.desk.item;

import org.jspecify.annotations.NullMarked;
