/**
 * Reading and writing JSON files with errors that people can act on.
 */
@NullMarked
package org.shelterwright.catalog.json;

import org.jspecify.annotations.NullMarked;
