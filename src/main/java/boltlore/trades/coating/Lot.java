package boltlore.trades.coating;

import boltlore.catalogue.PowderCoat;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A row of the overview: a batch for an own oven, or a send-out. */
record Lot(
        String what,
        Wording finish,
        String where,
        String powder,
        String cure,
        @Nullable LocalDate out,
        @Nullable LocalDate need,
        int number,
        int pieces,
        BigDecimal areaM2) {

    /** What is needed on the same day goes out before our own is hung, for it is away longer. */
    static final Comparator<Lot> EARLIEST_NEED = Comparator.comparing(Lot::need, BatchRow.EARLIEST)
            .thenComparing(Lot::out, BatchRow.EARLIEST)
            .thenComparingInt(Lot::number);

    static Lot of(OvenBatch batch) {
        return new Lot(
                "Batch " + batch.number(),
                batch.finish().says(),
                batch.oven().says(),
                batch.finish().coats().stream().map(PowderCoat::powder).collect(Collectors.joining(", then ")),
                CoatWords.cures(batch.finish()),
                null,
                batch.needBy(),
                batch.number(),
                batch.pieces(),
                batch.areaM2());
    }

    static Lot of(SendOut sendOut) {
        return new Lot(
                "Send-out " + sendOut.number() + (sendOut.tooBig().isEmpty() ? "" : ", too large for us"),
                sendOut.finish().says(),
                sendOut.coater().name(),
                "",
                "",
                sendOut.outBy(),
                sendOut.backBy(),
                sendOut.number(),
                sendOut.pieces(),
                sendOut.areaM2());
    }
}
