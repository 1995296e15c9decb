/** Small houses, most of them built wrong on purpose, on which the rules of the house are tried. */
@NullMarked
package boltlore.architecture.samples;

import org.jspecify.annotations.NullMarked;
