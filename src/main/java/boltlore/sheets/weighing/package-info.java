/** The weight statement of one order: pages and words over a weighing. Computes nothing of its own. */
@NullMarked
package boltlore.sheets.weighing;

import org.jspecify.annotations.NullMarked;
