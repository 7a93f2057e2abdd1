/**
 * Where the program starts and its parts are put together. Nothing in this module calculates: it asks the
 * modules below, and shows, writes and draws what they answer.
 */
@NullMarked
package org.shelterwright.app;

import org.jspecify.annotations.NullMarked;
