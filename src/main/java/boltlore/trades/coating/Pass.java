package boltlore.trades.coating;

import boltlore.catalogue.PowderCoat;

/**
 * One coat of one batch.
 *
 * @param coat from 1 at the metal
 */
public record Pass(OvenBatch batch, int coat) {

    public PowderCoat powder() {
        return batch.finish().coats().get(coat - 1);
    }

    public int coats() {
        return batch.finish().coats().size();
    }

    /** 'batch 2', 'batch 3 coat 1'. */
    String says() {
        return "batch " + batch.number() + (coats() > 1 ? " coat " + coat : "");
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
