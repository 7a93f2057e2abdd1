/**
 * Blocks: pieces put together without waste beforehand, from which a load is built.
 */
@NullMarked
package org.shelterwright.solver.load.block;

import org.jspecify.annotations.NullMarked;
