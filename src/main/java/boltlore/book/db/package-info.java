/**
 * The book on a disk or a server. Nothing else knows a database: what is written here is what {@code book} says has
 * happened, what is read comes back as its records. A new table is a migration beside the class's resources and a
 * {@link boltlore.book.db.Sum} in {@link boltlore.book.db.Sums}.
 *
 * <p>A command is one transaction that may run twice: on a server it is serializable and repeated on conflict, so its work
 * only reads and writes the book. Kits are resolved before, and the transaction looks whether what they came from still
 * stands.
 */
@NullMarked
package boltlore.book.db;

import org.jspecify.annotations.NullMarked;
