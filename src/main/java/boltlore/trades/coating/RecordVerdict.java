package boltlore.trades.coating;

import boltlore.catalogue.Workshop;
import boltlore.findings.Finding;
import boltlore.findings.Findings;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All that the coating shop wrote down, judged.
 *
 * @param film batches in the order of their numbers, read or not; none where the record is of powder alone
 * @param powder runs with powder issued, in their order
 * @param apart what is of no batch or run of this plan
 */
public record RecordVerdict(List<FilmVerdict> film, List<PowderVerdict> powder, Findings apart) {

    /**
     * Judges what was written down of a plan.
     *
     * @param filmRead whether the record is of film, though nothing may be filled in yet
     */
    public static RecordVerdict of(
            CoatPlan plan, boolean filmRead, List<FilmReading> readings, List<PowderIssued> issued, Workshop workshop) {
        FilmPlaces places = new FilmPlaces(plan);
        List<FilmVerdict> film = plan.batches().stream()
                .filter(batch -> filmRead && !batch.rows().isEmpty())
                .map(batch -> FilmVerdict.of(batch, places.of(batch, readings)))
                .toList();
        List<PowderVerdict> powder = plan.runs().stream()
                .flatMap(run -> issued.stream()
                        .filter(powders ->
                                run(plan, powders).filter(run::equals).isPresent())
                        .map(powders -> PowderVerdict.of(run, powders.kg(), workshop)))
                .toList();
        Stream<Finding> otherRuns =
                issued.stream().filter(powders -> run(plan, powders).isEmpty()).map(RecordVerdict::otherRun);
        return new RecordVerdict(
                film, powder, Stream.concat(places.apart(readings), otherRuns).collect(Findings.collected()));
    }

    /** By its code, or by its number where the record says none. */
    private static Optional<PowderRun> run(CoatPlan plan, PowderIssued issued) {
        return plan.runs().stream()
                .filter(run -> issued.code().isEmpty()
                        ? run.number() == issued.run()
                        : CoatCodes.run(run).equals(issued.code()))
                .findFirst();
    }

    private static Finding otherRun(PowderIssued issued) {
        return Finding.of(
                FilmFinding.RUN_CHANGED_SINCE, "run " + issued.run(), "run", issued.run(), "issued", issued.kg());
    }

    /** All that somebody must act on. */
    public Findings findings() {
        return Stream.of(
                        apart.all().stream(),
                        film.stream().flatMap(FilmVerdict::findings),
                        powder.stream().flatMap(PowderVerdict::findings))
                .flatMap(some -> some)
                .collect(Findings.collected());
    }
}
