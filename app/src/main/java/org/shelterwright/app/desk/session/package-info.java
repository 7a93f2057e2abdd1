/** What is on the desk: one layout with its history, its ledger and what is selected. Needs no window. */
@NullMarked
package org.shelterwright.app.desk.session;

import org.jspecify.annotations.NullMarked;
