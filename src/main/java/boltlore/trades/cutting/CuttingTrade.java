package boltlore.trades.cutting;

import boltlore.bill.Bill;
import boltlore.catalogue.BarStock;
import boltlore.catalogue.Catalogue;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.findings.Findings;
import boltlore.json.JsonFile;
import boltlore.trades.KitInWork;
import boltlore.trades.Room;
import boltlore.trades.StoppedOrder;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.TradeResult.Apart;
import boltlore.trades.TradeResult.Sheet;
import boltlore.trades.cutting.CutPlan.NotCut;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** Which bar gives which piece for all orders together, and the sheet-metal blanks. */
public final class CuttingTrade extends Trade {

    private static final TradeOption<Path> REMNANTS =
            TradeOption.file("--remnants", "Remnants at hand, which are used before new bars.");
    private static final TradeOption<Path> LEFT = TradeOption.file(
            "--left", "Write the remnants that lie on the rack when all is cut, for --remnants next time.");

    public CuttingTrade() {
        super(
                "cut",
                Room.FABRICATION,
                "Plan which bar gives which piece for several orders together and write their cutting list.",
                "No order of these can be cut.",
                List.of(CuttingFinding.values()),
                List.of(REMNANTS, LEFT));
    }

    @Override
    public List<Fault> faults(Given options, Catalogue catalogue) {
        return rack(options, catalogue).faults();
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, Given options) {
        return work(kits, List.of(), options);
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, List<StoppedOrder> stopped, Given options) {
        Catalogue catalogue = kits.get(0).catalogue();
        List<Bill> bills = kits.stream().map(KitInWork::bill).toList();
        Findings left = stopped.stream().map(StoppedOrder::finding).collect(Findings.collected());
        return rack(options, catalogue)
                .then(read -> cut(bills, read.rack(), catalogue, left)
                        .then(cut -> Outcome.sound(List.of(new TradeResult(
                                "", cut.findings(), List.of(cut.sheet()), left(cut.plan(), read, options))))));
    }

    /**
     * Bars cut for orders together.
     *
     * @param after what lies on the rack when all is cut
     */
    public record CutTogether(CutPlan plan, RemnantRack after, Findings findings, Sheet sheet) {}

    /** Cuts remnants first; faulty where a piece cannot be cut, for a list without it would be taken for whole. */
    public static Outcome<CutTogether> cut(List<Bill> bills, RemnantRack rack, Catalogue catalogue, Findings more) {
        CutPlan plan = CutPlanner.plan(bills, catalogue, rack);
        List<Fault> faults =
                plan.notCut().stream().map(CuttingTrade::fault).distinct().toList();
        Findings findings = plan.findings(catalogue.workshop().currency()).and(more);
        Sheet sheet = Sheet.of(() -> CuttingReport.compose(plan, findings, catalogue));
        return faults.isEmpty()
                ? Outcome.sound(new CutTogether(plan, rack.after(plan), findings, sheet))
                : Outcome.faulty(faults);
    }

    /** A rack that comes back into its own file carries over all that somebody has written in it, heat numbers above all. */
    private static List<Apart> left(CutPlan plan, RackRead read, Given options) {
        return options
                .get(LEFT)
                .map(file -> new Apart(
                        file,
                        "cut --left",
                        () -> RemnantsFile.written(read.rack().after(plan)),
                        options.get(REMNANTS).filter(from -> same(from, file)).isPresent() ? read.text() : ""))
                .stream()
                .toList();
    }

    private static boolean same(Path one, Path other) {
        return one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
    }

    /** @param text of its file */
    private record RackRead(RemnantRack rack, String text) {}

    private static Outcome<RackRead> rack(Given options, Catalogue catalogue) {
        Path file = options.get(REMNANTS).orElse(null);
        return file == null
                ? Outcome.sound(new RackRead(RemnantRack.EMPTY, ""))
                : JsonFile.bytes(file)
                        .then(bytes -> RemnantsFile.parse(file.toString(), bytes, catalogue)
                                .then(rack ->
                                        Outcome.sound(new RackRead(rack, new String(bytes, StandardCharsets.UTF_8)))));
    }

    /** Pieces that cannot be cut are a fault of the catalogue: a list without them would be taken for whole. */
    private static Fault fault(NotCut not) {
        BarStock bars = not.bars();
        String part = "part " + not.set().part().number();
        if (bars == null) {
            return Fault.of(
                    "materials.json",
                    part + " cut from '" + not.material() + "', of which no bars are known",
                    "the bars that it is bought in",
                    "Add 'stock' to that material.");
        }
        String longest =
                "pieces that the longest bar of " + bars.longest().lengthMm() + " mm gives without its head trim of "
                        + bars.saw().headTrimMm().toPlainString() + " mm and its held tail of "
                        + bars.saw().heldTailMm().toPlainString() + " mm, slanted cuts included";
        return Fault.of(
                "materials.json", part + ", too long for '" + not.material() + "'", longest, "Buy longer bars.");
    }
}
