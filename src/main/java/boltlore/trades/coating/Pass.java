package boltlore.trades.coating;

import boltlore.catalogue.Coats;

/**
 * One coat of one batch.
 *
 * @param coat from 1 at the metal
 */
public record Pass(OvenBatch batch, int coat) {

    public Coats powder() {
        return batch.finish().coats().get(coat - 1);
    }

    public int coats() {
        return batch.finish().coats().size();
    }

    public boolean last() {
        return coat == coats();
    }

    boolean follows(Pass below) {
        return below.batch.number() == batch.number() && below.coat + 1 == coat;
    }

    /** Whether pieces of that row are in it, by their finish. */
    boolean takes(BatchRow row) {
        return batch.finish().name().equals(row.finish().name());
    }

    boolean same(Pass other) {
        return other.batch.number() == batch.number() && other.coat == coat;
    }
}
