package boltlore.trades.coating;

import boltlore.catalogue.Workshop;
import boltlore.findings.Findings;
import java.util.List;
import java.util.stream.Stream;

/**
 * All that the coating shop wrote down, judged.
 *
 * @param film batches with readings, in the order of their numbers
 * @param powder runs with powder issued, in their order
 */
public record RecordVerdict(List<FilmVerdict> film, List<PowderVerdict> powder) {

    /** Every reading is of a batch, and every issue of a run, that the plan has. */
    public static RecordVerdict of(
            CoatPlan plan, List<FilmReading> readings, List<PowderIssued> issued, Workshop workshop) {
        List<FilmVerdict> film = plan.batches().stream()
                .filter(batch -> readings.stream().anyMatch(reading -> reading.batch() == batch.number()))
                .map(batch -> FilmVerdict.of(batch, of(batch, readings)))
                .toList();
        List<PowderVerdict> powder = plan.runs().stream()
                .flatMap(run -> issued.stream()
                        .filter(powders -> powders.run() == run.number())
                        .map(powders -> PowderVerdict.of(run, powders.kg(), workshop)))
                .toList();
        return new RecordVerdict(film, powder);
    }

    private static List<FilmReading> of(OvenBatch batch, List<FilmReading> readings) {
        return readings.stream()
                .filter(reading -> reading.batch() == batch.number())
                .toList();
    }

    /** All that somebody must act on. */
    public Findings findings() {
        return Stream.concat(
                        film.stream().flatMap(FilmVerdict::findings),
                        powder.stream().flatMap(PowderVerdict::findings))
                .collect(Findings.collected());
    }
}
