/**
 * The room that talks with customers: orders from the first question to the confirmed quotation.
 *
 * <p>While a question is read, the pages behind its answers are worked out; the cheapest kits are kept for all drafts that
 * are sold alike, and an answer that the cheapest kit has already needs no search. What people undo is the journal's last
 * draft but one.
 */
@NullMarked
package boltlore.desk.sales;

import org.jspecify.annotations.NullMarked;
