/** The command line: one file a command, exit codes and the wording of what went wrong; it computes nothing itself. */
@NullMarked
package boltlore.cli;

import org.jspecify.annotations.NullMarked;
