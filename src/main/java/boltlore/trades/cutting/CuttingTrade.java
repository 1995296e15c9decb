package boltlore.trades.cutting;

import boltlore.bill.Bill;
import boltlore.catalogue.BarStock;
import boltlore.catalogue.Catalogue;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.trades.KitInWork;
import boltlore.trades.Room;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.TradeResult.Apart;
import boltlore.trades.TradeResult.Sheet;
import boltlore.trades.cutting.CutPlan.NotCut;
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
        return remnants(options, catalogue).faults();
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, Given options) {
        Catalogue catalogue = kits.get(0).catalogue();
        List<Bill> bills = kits.stream().map(KitInWork::bill).toList();
        return remnants(options, catalogue).then(remnants -> {
            CutPlan plan = CutPlanner.plan(bills, catalogue, remnants);
            List<Fault> faults =
                    plan.notCut().stream().map(CuttingTrade::fault).distinct().toList();
            return faults.isEmpty() ? Outcome.sound(List.of(result(plan, catalogue, options))) : Outcome.faulty(faults);
        });
    }

    private static TradeResult result(CutPlan plan, Catalogue catalogue, Given options) {
        List<Apart> left = options
                .get(LEFT)
                .map(file -> new Apart(
                        file,
                        "cut --left",
                        () -> RemnantsFile.written(plan.left().toList())))
                .stream()
                .toList();
        return new TradeResult(
                "",
                plan.findings(catalogue.workshop().currency()),
                List.of(Sheet.of(() -> CuttingReport.compose(plan, catalogue))),
                left);
    }

    private static Outcome<List<Remnant>> remnants(Given options, Catalogue catalogue) {
        return options.get(REMNANTS)
                .map(file -> RemnantsFile.read(file, catalogue))
                .orElse(Outcome.sound(List.of()));
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
                "pieces that the longest bar of " + bars.longest().lengthMm() + " mm gives after its head trim of "
                        + bars.saw().headTrimMm().toPlainString() + " mm, slanted cuts included";
        return Fault.of(
                "materials.json", part + ", too long for '" + not.material() + "'", longest, "Buy longer bars.");
    }
}
