/** Answers as JSON for programs. */
@NullMarked
package boltlore.answers.json;

import org.jspecify.annotations.NullMarked;
