/**
 * JSON in and out: a strict tree that knows where everything stands, a reading cursor that collects faults, and a
 * deterministic writer. The only package that may import Jackson, and of Jackson only the streaming core.
 */
@NullMarked
package boltlore.json;

import org.jspecify.annotations.NullMarked;
