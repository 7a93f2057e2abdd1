/**
 * A journey: its legs by road, rail, sea and air, what goes, what it goes on, where it stands there and how it is held.
 */
@NullMarked
package org.shelterwright.layouts.transport;

import org.jspecify.annotations.NullMarked;
