/**
 * Results in plain text, for people.
 */
@NullMarked
package org.shelterwright.app.cli.text;

import org.jspecify.annotations.NullMarked;
