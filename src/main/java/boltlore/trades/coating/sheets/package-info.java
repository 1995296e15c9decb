/** What the coating shop gets: the powder-coat batch sheet, from a coating plan. Works nothing out by itself. */
@NullMarked
package boltlore.trades.coating.sheets;

import org.jspecify.annotations.NullMarked;
