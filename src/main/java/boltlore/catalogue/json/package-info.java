/**
 * Reads a catalogue folder into checked records: first each file by itself, then all that hangs together across files,
 * with every fault of both in one go. The only place that knows how a catalogue is written down.
 *
 * <p>Defaults are put into the trees before a reader sees them ({@link boltlore.catalogue.json.Defaults}), so the core
 * knows full values; the schema leaves such keys optional.
 *
 * <p>Days and chassis numbers are pieces, and pieces are values: a family's effectivities cut time before any condition is
 * read. Behind that nothing knows dates but the order, which settles the value. A part of the base vehicle is a part of its
 * own (its source: donor), so no sum, search or proof needs an exception.
 */
@NullMarked
package boltlore.catalogue.json;

import org.jspecify.annotations.NullMarked;
