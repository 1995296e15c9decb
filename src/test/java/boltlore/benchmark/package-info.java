/**
 * Measurements that a person starts by hand; none of them is a test and none runs in the build.
 *
 * <p>On two busy cores, warm, 95 of 100 looks at what is still open take at most 0.04 ms for the demo's van, 8.8 ms (worst
 * 41 ms) for 500 options with 3,000 limits, 6.9 ms (worst 80 ms) for 1,500 yes-or-no options with 4,000 limits. 500 orders
 * (18,700 hung pieces) are planned for coating in 1.3 s of one core. Of 200 orders (20 s of one core, plain kits) workbooks
 * take 34 %, resolution and bill 18 %, files on disk 13 %; the second compiler takes 1.7 times the processor's time, the
 * parallel collector gains nothing.
 *
 * <p>A run that writes many files must not follow the deletion of as many: ext4 does not take freed inodes again for some
 * seconds and looks past each of them, so 11,000 files take 0.3 s to open, or 3 s after {@code rm -r}.
 */
@NullMarked
package boltlore.benchmark;

import org.jspecify.annotations.NullMarked;
