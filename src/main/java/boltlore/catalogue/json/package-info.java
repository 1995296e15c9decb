/**
 * Reads a catalogue folder into checked records: first each file by itself, then all that hangs together across files,
 * with every fault of both in one go. The only place that knows how a catalogue is written down.
 */
@NullMarked
package boltlore.catalogue.json;

import org.jspecify.annotations.NullMarked;
