/** The rules engine behind one function: facts in, conclusions out. The only package that imports it. */
@NullMarked
package boltlore.resolution.rules;

import org.jspecify.annotations.NullMarked;
