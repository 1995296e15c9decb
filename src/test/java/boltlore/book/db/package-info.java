/** The book on real files and on a real server, which the tests start themselves. */
package boltlore.book.db;
