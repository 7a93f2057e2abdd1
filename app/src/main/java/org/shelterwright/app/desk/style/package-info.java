/** How the window looks: the theme, the style sheet made from the colour roles, fonts and icons. */
@NullMarked
package org.shelterwright.app.desk.style;

import org.jspecify.annotations.NullMarked;
