package boltlore.trades.bill.sheets;

import static boltlore.report.Formula.cell;
import static boltlore.report.Formula.sum;

import boltlore.report.Cell;
import boltlore.report.Formula;
import boltlore.report.Kind;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.trades.coating.KitFilm;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.Totals;
import boltlore.trades.costing.cost.Bridge;
import boltlore.trades.costing.quote.Calculation;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.Quotation;
import java.math.BigDecimal;
import java.util.function.Function;

/** From direct cost over full cost to the price that is quoted, and the masses, on the bill and again on the front page. */
final class PriceBlock {

    private static final String NAME = "price";

    private final OrderPricing pricing;
    private final CostedBill costed;
    private final Kind money;
    private final ParticularsBuilder says = Particulars.named(NAME);

    private PriceBlock(OrderPricing pricing) {
        this.pricing = pricing;
        this.costed = pricing.costed();
        this.money = Kind.money(costed.currency());
    }

    /** On the bill's own page, as live formulas over its total row. */
    static ParticularsBuilder worked(OrderPricing pricing) {
        return new PriceBlock(pricing).worked();
    }

    private ParticularsBuilder worked() {
        Totals totals = costed.totals();
        says.say("own", "Parts and manufacture", money, total("extended"), totals.own())
                .say("coating", "Coating", money, total("coating"), totals.coating())
                .say("cost", "Direct cost of the kit", money, sum(value("own"), value("coating")), totals.cost());
        pricing.found().ifPresent(found -> {
            full(Bridge.of(found.cost()));
            price(found, new PriceFormulas(found)::of);
        });
        return withoutPrice();
    }

    private void full(Bridge bridge) {
        says.say(
                        "held",
                        "Less labour in the costs of made parts",
                        money,
                        bridge.held().negate())
                .say("work", "Labour, set-up and outside operations", money, bridge.work())
                .say("kitWork", "Assembly, test, packing, crates", money, bridge.kitWork())
                .say("delivery", "Freight, duty and clearance", money, bridge.delivery())
                .say("overhead", "Overhead", money, bridge.overhead())
                .say(
                        "full",
                        "Full cost of the kit",
                        money,
                        sum(
                                value("cost"),
                                value("held"),
                                value("work"),
                                value("kitWork"),
                                value("delivery"),
                                value("overhead")),
                        bridge.full());
    }

    /** @param live formula of a row, by its key */
    private void price(Calculation found, Function<String, Formula> live) {
        Quotation quotation = found.quotation();
        Kind quoted = Kind.money(quotation.currency());
        says.say("kitPrice", "Price of the kit", quoted, live.apply("kitPrice"), quotation.kitPrice());
        if (!quotation.extras().isEmpty()) {
            BigDecimal extras = quotation.extrasPrice();
            Formula formula = live.apply("extras");
            says.add(
                    "extras",
                    "Extras",
                    quoted,
                    formula instanceof Formula.Fixed ? Cell.of(extras) : Cell.of(formula, extras));
        }
        if (quotation.discount().signum() != 0) {
            BigDecimal off = quotation.discount().negate();
            says.say("discount", "Discount", quoted, live.apply("discount"), off);
        }
        says.say("net", "Price before tax", quoted, live.apply("net"), quotation.net())
                .say("tax", "Tax", quoted, live.apply("tax"), quotation.taxAmount())
                .say("total", "Price with tax", quoted, live.apply("total"), quotation.total())
                .say(
                        "margin",
                        "Margin on the price before tax",
                        Kind.percent(2),
                        live.apply("margin"),
                        found.marginLeftPercent());
    }

    private ParticularsBuilder withoutPrice() {
        String why = pricing.whyNoPrice();
        return why.isEmpty() ? says : says.say("noPrice", "Note", why);
    }

    static ParticularsBuilder masses(CostedBill costed) {
        BigDecimal kit = costed.totals().massKg();
        BigDecimal film = KitFilm.kg(costed.bill(), costed.catalogue().finishes());
        Kind kg = Kind.decimal(2).in("kg");
        Formula both = sum(cell("masses", "kit", Particulars.VALUE), cell("masses", "film", Particulars.VALUE));
        return Particulars.named("masses")
                .say("kit", "Mass of the kit", kg, total("massExtended"), kit)
                .say("film", "Film of powder", kg, film)
                .say("both", "Mass with film", kg, both, kit.add(film));
    }

    /** On the front page: the same figures, taken from the bill. */
    static ParticularsBuilder shown(OrderPricing pricing) {
        PriceBlock block = new PriceBlock(pricing);
        BigDecimal direct = pricing.costed().totals().cost();
        block.says.say("cost", "Direct cost of the kit", block.money, there("cost"), direct);
        pricing.found().ifPresent(found -> {
            BigDecimal full = found.cost().kit().total();
            block.says.say("full", "Full cost of the kit", block.money, there("full"), full);
            block.price(found, PriceBlock::there);
        });
        return block.withoutPrice();
    }

    static Formula value(String key) {
        return cell(NAME, key, Particulars.VALUE);
    }

    private static Formula there(String key) {
        return cell(PageNames.BILL, NAME, key, Particulars.VALUE);
    }

    private static Formula total(String column) {
        return cell("bill", "kit", column);
    }
}
