/**
 * How the time of each kind of work grows with a catalogue's size. A person starts it by hand ({@link boltlore.scale.Scale});
 * a small run of it is a test, so that the large one works when it is wanted.
 */
@NullMarked
package boltlore.scale;

import org.jspecify.annotations.NullMarked;
