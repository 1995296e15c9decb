/** Each check meets a catalogue with one defect, and a near miss. */
@NullMarked
package boltlore.checking;

import org.jspecify.annotations.NullMarked;
