/** The facts that the rules read and the conclusions they draw: records, nothing else. */
@NullMarked
package boltlore.resolution.rules.facts;

import org.jspecify.annotations.NullMarked;
