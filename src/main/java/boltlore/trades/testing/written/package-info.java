/** Records of tests as files: empty ones to be filled in, and filled-in ones read back. Judging is for the package above. */
@NullMarked
package boltlore.trades.testing.written;

import org.jspecify.annotations.NullMarked;
