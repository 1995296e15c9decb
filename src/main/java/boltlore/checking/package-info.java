/**
 * Whether a catalogue that reads soundly also is consistent as a real kit does. Says what is doubtful, changes nothing
 * and stops nothing.
 */
@NullMarked
package boltlore.checking;

import org.jspecify.annotations.NullMarked;
