/**
 * What can be fitted, into what, and what carries it: the catalog and its entries. Holds no pose.
 */
@NullMarked
package org.shelterwright.catalog;

import org.jspecify.annotations.NullMarked;
