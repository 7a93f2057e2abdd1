/** The equipment of the brief, still to place and placed, and what the catalog offers beside it. */
@NullMarked
package org.shelterwright.app.desk.list;

import org.jspecify.annotations.NullMarked;
