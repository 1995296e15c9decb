/**
 * The desk: pages for the rooms, in a browser. Puts the rooms in their row; what they stand in is {@code desk.frame}, and
 * what each shows is in a package of its own.
 *
 * <p>A room is added, or grown, by:
 *
 * <ol>
 *   <li>a package {@code desk.NAME} with a class that is a {@link boltlore.desk.frame.Room}: its {@code open} says which
 *       path is answered by which method. {@code look} is a page, {@code act} is what a form says. A method takes a {@link
 *       boltlore.desk.frame.Call} and gives an {@link boltlore.desk.frame.Answer}: a page, 'done, look there', a file, or
 *       'there is none'. It knows nothing of the web, so a test calls it as it is;
 *   <li>templates in {@code src/main/jte/NAME}, each with {@code @param Head head} and {@code @param ITS_RECORD page}, inside
 *       {@code @template.frame.layout(head = head, content = @`…`)}. A page's record is public and holds what is shown,
 *       calculated already. Each form begins with {@code @template.frame.proof(head = head)}; a field that may be refused
 *       shows {@code head.typed("name", usual)}. Style: words and tables first; the classes of {@code desk.css} that are
 *       there already ({@code facts}, {@code rows}, {@code number}, {@code fields}, {@code field}, {@code acts}, {@code
 *       next}) before new ones;
 *   <li>a list that may grow as a {@link boltlore.desk.frame.Stretch}, with {@code @template.frame.stretch} above it: no page
 *       weighs more than 150 kB, which a test over all pages of the demo looks at; what takes a second or more is worked out
 *       beforehand in {@link boltlore.desk.frame.Room#ahead};
 *   <li>its line in {@link boltlore.desk.Desk}, and a journey in a browser beside its tests ({@code DeskInBrowserTest}).
 * </ol>
 *
 * <p>A method that acts makes one call of the book through {@link boltlore.desk.frame.Acting}: the book keeps the form's
 * key with what it did, so that the same form sent again is answered as the first time and nothing is done twice. Faults
 * become the page that the form stood on, with what was typed; one that {@link boltlore.desk.frame.Typed} has found stands at
 * its field too, and the first of them has the keyboard. What stands in fields is read by {@link
 * boltlore.desk.frame.Typed}; the page that follows says with {@link boltlore.desk.frame.Told} which entries were made. A sheet
 * of a trade stands within a page as a {@link boltlore.desk.frame.DrawnSheet}.
 */
@NullMarked
package boltlore.desk;

import org.jspecify.annotations.NullMarked;
