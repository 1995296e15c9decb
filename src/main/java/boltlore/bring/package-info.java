/**
 * Lists of parts as workshops keep them, in spreadsheets: what each table, column and row of a sheet is, why it is thought
 * so, and what is in doubt. Nothing is guessed in silence: a doubt is a value, and what is not read is named by its address.
 */
@NullMarked
package boltlore.bring;

import org.jspecify.annotations.NullMarked;
