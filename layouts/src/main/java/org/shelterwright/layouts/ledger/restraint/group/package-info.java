/**
 * The solver of one fixing group: a rigid base on bolts that only pull and a contact that only pushes. Pure mechanics in
 * metres and newtons; knows no item, body or limit.
 */
@NullMarked
package org.shelterwright.layouts.ledger.restraint.group;

import org.jspecify.annotations.NullMarked;
