/**
 * How one kit travels: what goes in which crate, what customs and dangerous-goods papers would say. It drafts; a qualified
 * person signs. Knows no sheet.
 */
@NullMarked
package boltlore.trades.shipping;

import org.jspecify.annotations.NullMarked;
