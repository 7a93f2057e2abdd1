/**
 * The subject access: zones stay free, people reach every work place and service face, and get out again.
 */
@NullMarked
package org.shelterwright.layouts.ledger.access;

import org.jspecify.annotations.NullMarked;
