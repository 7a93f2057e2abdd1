/** The search for places beside the view: started, watched, stopped, and its layouts compared and taken over. */
@NullMarked
package org.shelterwright.app.desk.search;

import org.jspecify.annotations.NullMarked;
