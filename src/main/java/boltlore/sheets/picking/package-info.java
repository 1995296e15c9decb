/** The picking list as stores carry it on a clipboard: words, columns and boxes. Computes nothing and knows no file. */
@NullMarked
package boltlore.sheets.picking;

import org.jspecify.annotations.NullMarked;
