/** The picking list as stores carry it on a clipboard: words, columns and boxes. Computes nothing and knows no file. */
@NullMarked
package boltlore.trades.picking.sheets;

import org.jspecify.annotations.NullMarked;
