/** The script that starts the program, tried on a stand-in for it: arguments, exit codes, archive, missing Java. */
@NullMarked
package boltlore.launcher;

import org.jspecify.annotations.NullMarked;
