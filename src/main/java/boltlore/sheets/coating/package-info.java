/** What the coating shop gets: the powder-coat batch sheet, from a coating plan. Works nothing out by itself. */
@NullMarked
package boltlore.sheets.coating;

import org.jspecify.annotations.NullMarked;
