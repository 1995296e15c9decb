/** Names, texts and amounts that would hurt if mixed up. Knows no catalogue. */
@NullMarked
package boltlore.measure;

import org.jspecify.annotations.NullMarked;
