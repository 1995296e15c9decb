/** The facts and the rule base of one resolution, and nothing that reads a file or prints; the only user of Drools. */
@NullMarked
package boltlore.resolution.rules;

import org.jspecify.annotations.NullMarked;
