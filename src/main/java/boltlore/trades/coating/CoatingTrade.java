package boltlore.trades.coating;

import boltlore.catalogue.Catalogue;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.findings.Findings;
import boltlore.findings.Kind;
import boltlore.trades.KitInWork;
import boltlore.trades.Room;
import boltlore.trades.StoppedOrder;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.TradeResult.Sheet;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The coating of many orders together: what is sprayed after what, what cures with what, what goes out. */
public final class CoatingTrade extends Trade {

    public static final String NOTHING = "No order of these can be coated, or not the late one.";

    private static final TradeOption<String> LATE = TradeOption.order(
            "--late", "One more order file: say what it moves in the plan of the others, which stays as it is.");
    private static final TradeOption<LocalDate> START = TradeOption.date(
            "--start", "First working day (2026-06-01): days become dates, and late orders are listed.");
    private static final TradeOption<Path> AGAIN = TradeOption.file(
            "--again",
            "Plan only these pieces, to be coated again: a CSV table with a row for each part and piece, such as the one that"
                    + " film-check writes.");

    public CoatingTrade() {
        super(
                "coat",
                Room.FABRICATION,
                "Plan the coating of several orders together and write their powder-coat batch sheet.",
                NOTHING,
                Stream.<Kind>concat(Stream.of(CoatingFinding.values()), Stream.of(FilmFinding.values()))
                        .toList(),
                List.of(LATE, START, AGAIN));
    }

    @Override
    public List<Fault> faults(Given options, Catalogue catalogue) {
        List<Fault> faults = new ArrayList<>(again(options).faults());
        if (options.has(AGAIN) && options.has(LATE)) {
            faults.add(Fault.of(AGAIN.name(), "it together with " + LATE.name(), "one of the two", ""));
        }
        return faults;
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, Given options) {
        return work(kits, List.of(), options);
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, List<StoppedOrder> stopped, Given options) {
        return again(options).then(again -> {
            Optional<CoatJob> job = CoatJob.of(
                            kits,
                            options.get(LATE).orElse(null),
                            options.get(START).orElse(null),
                            again)
                    .map(planned -> planned.without(stopped));
            List<Fault> faults = job.map(planned -> again.missing(planned.plan())).orElse(List.of()).stream()
                    .map(CoatingTrade::missing)
                    .toList();
            return faults.isEmpty()
                    ? Outcome.sound(job.stream().map(CoatingTrade::work).toList())
                    : Outcome.faulty(faults);
        });
    }

    /** The first batch's sheets and film record stay: the coating shop still reads them. */
    @Override
    public String beside(Given given) {
        return again(given) instanceof Outcome.Sound<Again> sound
                        && !sound.value().isEmpty()
                ? "again-" + sound.value().lastCoating()
                : "";
    }

    private static Outcome<Again> again(Given options) {
        return options.get(AGAIN).map(Again::read).orElse(Outcome.sound(Again.NONE));
    }

    private static Fault missing(String piece) {
        return Fault.of(
                AGAIN.name(),
                "piece '" + piece + "'",
                "a piece that these orders have coated",
                "Give its order too, or take the piece off the list.");
    }

    private static TradeResult work(CoatJob job) {
        Findings findings = CoatingFindings.find(job);
        Sheet batches = new Sheet("", () -> CoatSheet.compose(job, findings), () -> FilmRecord.write(job), true);
        return new TradeResult("", findings, List.of(batches));
    }
}
