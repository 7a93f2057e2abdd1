/**
 * Output for people: results and messages on their own streams, progress on a terminal only, tables and figures in plain
 * text.
 */
@NullMarked
package org.shelterwright.app.cli.terminal;

import org.jspecify.annotations.NullMarked;
