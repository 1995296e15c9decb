package boltlore.trades.costing.sheets;

import boltlore.faults.Outcome;
import boltlore.findings.Findings;
import boltlore.report.SheetFile;
import boltlore.trades.KitInWork;
import boltlore.trades.Room;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.TradeResult.Sheet;
import boltlore.trades.costing.quote.Calculation;
import boltlore.trades.costing.quote.OptionPrices;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.Quotation;
import boltlore.trades.costing.quote.QuoteOptions;
import boltlore.trades.weighing.AxleLoadsTrade;
import java.util.List;

/** What kits cost in full, and what their customers are quoted. */
public final class CostingTrade extends Trade {

    /** Nothing was asked of the price alone: without one the kit goes on, and says so. */
    private static final TradeOption<Boolean> WITH_KIT = TradeOption.flag("--with-kit", "");

    public CostingTrade() {
        super(
                "price",
                Room.SALES,
                "Work out what kits cost in full and how long they take, and write for each order a cost statement for"
                        + " the workshop and a quotation for the customer.",
                "No order of these can be priced.",
                List.of(CostingFinding.values()),
                QuoteOptions.ALL);
    }

    @Override
    public Given forKit() {
        return Given.NONE.with(WITH_KIT, true);
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, Given options) {
        return Outcome.all(kits.stream().map(kit -> work(kit, options)).toList());
    }

    private static Outcome<TradeResult> work(KitInWork kit, Given options) {
        OrderPricing pricing = QuoteOptions.pricing(kit, options);
        Findings findings = CostingFindings.find(
                pricing, pricing.quotation().map(Quotation::on).orElse(kit.day()));
        return pricing.calculation() instanceof Outcome.Sound<Calculation> sound
                ? Outcome.sound(
                        new TradeResult(kit.order().name(), findings, sheets(kit, sound.value(), findings, options)))
                : options.has(WITH_KIT)
                        ? Outcome.sound(new TradeResult(kit.order().name(), findings, List.of()))
                        : Outcome.faulty(pricing.calculation().faults());
    }

    /** What leaves the house and what must not, in folders of their own; findings are the workshop's. */
    private static List<Sheet> sheets(KitInWork kit, Calculation calculation, Findings findings, Given options) {
        return List.of(
                new Sheet(
                        "workshop",
                        () -> CostSheet.compose(calculation, findings),
                        () -> List.of(SheetFile.utf8("cost-bars.svg", CostSheet.bars(calculation.cost())))),
                new Sheet(
                        TradeResult.FOR_CUSTOMERS,
                        () -> QuotationSheet.compose(
                                calculation.quotation(),
                                kit.bill(),
                                AxleLoadsTrade.weighing(kit),
                                kit.catalogue(),
                                OptionPrices.of(
                                                kit,
                                                QuoteOptions.asked(kit, options),
                                                calculation.quotation().kitPrice())
                                        .orElse(null)),
                        List::of));
    }
}
