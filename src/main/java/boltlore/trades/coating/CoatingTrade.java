package boltlore.trades.coating;

import boltlore.faults.Outcome;
import boltlore.findings.Findings;
import boltlore.findings.Kind;
import boltlore.trades.KitInWork;
import boltlore.trades.Room;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.TradeResult.Sheet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The coating of many orders together: what is sprayed after what, what cures with what, what goes out. */
public final class CoatingTrade implements Trade {

    public static final String NOTHING = "No order of these can be coated, or not the late one.";

    private static final TradeOption<String> LATE = TradeOption.order(
            "--late", "One more order file: say what it moves in the plan of the others, which stays as it is.");
    private static final TradeOption<LocalDate> START = TradeOption.date(
            "--start", "First working day (2026-06-01): days become dates, and late orders are listed.");
    private static final TradeOption<Boolean> HANGING =
            TradeOption.flag("--hanging", "Also draw how each oven load may hang, as a hanging plan.");

    @Override
    public String name() {
        return "coat";
    }

    @Override
    public Room room() {
        return Room.FABRICATION;
    }

    @Override
    public String does() {
        return "Plan the coating of several orders together and write their powder-coat batch sheet.";
    }

    @Override
    public List<Kind> kinds() {
        return Stream.<Kind>concat(Stream.of(CoatingFinding.values()), Stream.of(FilmFinding.values()))
                .toList();
    }

    @Override
    public List<TradeOption<?>> options() {
        return List.of(LATE, START, HANGING);
    }

    @Override
    public Given forKit() {
        return Given.NONE.with(HANGING, true);
    }

    @Override
    public String nothing() {
        return NOTHING;
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, Given options) {
        return Outcome.sound(CoatJob.of(
                        kits, options.get(LATE).orElse(null), options.get(START).orElse(null))
                .stream()
                .map(job -> work(job, options.has(HANGING)))
                .toList());
    }

    private static TradeResult work(CoatJob job, boolean hanging) {
        Findings findings = CoatingFindings.find(job);
        List<Sheet> sheets = new ArrayList<>(List.of(Sheet.always(() -> CoatSheet.compose(job, findings))));
        if (hanging) {
            sheets.add(Sheet.of(() -> HangingSheet.compose(job)));
        }
        return new TradeResult("", findings, sheets);
    }
}
