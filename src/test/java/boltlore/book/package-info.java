/** What the book says has happened, as values. */
package boltlore.book;
