/** Two revisions of a family side by side: which kits an edit changes, proved part by part. Reads no file. */
@NullMarked
package boltlore.proof.revision;

import org.jspecify.annotations.NullMarked;
