/** The command line as a person meets it: words, exit codes, nothing half-written. */
@NullMarked
package boltlore.cli;

import org.jspecify.annotations.NullMarked;
