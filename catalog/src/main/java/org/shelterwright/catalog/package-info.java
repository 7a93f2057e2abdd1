/**
 * What there is to build with: exact geometry, items, bodies, carriers and the reading of them. Nothing in
 * this module knows where anything stands.
 */
@NullMarked
package org.shelterwright.catalog;

import org.jspecify.annotations.NullMarked;
