/** From conditions, reasons and findings to the sentences that people read. */
@NullMarked
package boltlore.explanation;

import org.jspecify.annotations.NullMarked;
