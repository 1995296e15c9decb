/**
 * The command line: one file a command, exit codes and the wording of what went wrong; it computes nothing itself.
 *
 * <p>A start reads only its own command: one class archive for all commands is made with the image, and {@link
 * boltlore.cli.Hung} makes a command where it is called. Many orders run one at a time on each core, from resolving to
 * writing, and of each only its printed text is kept; {@code kit} writes what every order needs, {@code kit --all} the
 * rest.
 */
@NullMarked
package boltlore.cli;

import org.jspecify.annotations.NullMarked;
