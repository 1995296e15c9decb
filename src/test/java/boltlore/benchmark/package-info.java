/** Measurements that a person starts by hand; none of them is a test and none runs in the build. */
@NullMarked
package boltlore.benchmark;

import org.jspecify.annotations.NullMarked;
