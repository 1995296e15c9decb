/**
 * What a person does with orders in the book: takes one down, quotes it, confirms it, moves it on. Commands and pages make
 * the same calls; each is one transaction.
 */
@NullMarked
package boltlore.book.orders;

import org.jspecify.annotations.NullMarked;
