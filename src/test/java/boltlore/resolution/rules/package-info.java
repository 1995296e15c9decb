/** What each rule concludes and what it leaves alone, what is withdrawn with what, and how rules are written. */
@NullMarked
package boltlore.resolution.rules;

import org.jspecify.annotations.NullMarked;
