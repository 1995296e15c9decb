package boltlore.trades.bill.sheets;

import static boltlore.report.Formula.cell;
import static boltlore.report.Formula.sum;

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
import java.util.function.BiFunction;

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
            price(found, PriceBlock::worked);
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
                .say("delivery", "Freight, duty and clearance", money, bridge.delivery())
                .say("overhead", "Overhead", money, bridge.overhead())
                .say(
                        "full",
                        "Full cost of the kit",
                        money,
                        sum(value("cost"), value("held"), value("work"), value("delivery"), value("overhead")),
                        bridge.full());
    }

    /** @param formula of a row of the quotation, by its key */
    private void price(Calculation found, BiFunction<String, Quotation, Formula> formula) {
        Quotation quotation = found.quotation();
        Kind quoted = Kind.money(quotation.currency());
        say("kitPrice", "Price of the kit", quoted, formula, quotation, quotation.kitPrice());
        if (!quotation.extras().isEmpty()) {
            say("extras", "Extras", quoted, formula, quotation, quotation.extrasPrice());
        }
        if (quotation.discount().signum() != 0) {
            BigDecimal off = quotation.discount().negate();
            say("discount", "Discount", quoted, formula, quotation, off);
        }
        say("net", "Price before tax", quoted, formula, quotation, quotation.net());
        say("tax", "Tax", quoted, formula, quotation, quotation.taxAmount());
        say("total", "Price with tax", quoted, formula, quotation, quotation.total());
        says.say("margin", "Margin on the price before tax", Kind.percent(2), found.marginLeftPercent());
    }

    private void say(
            String key,
            String label,
            Kind kind,
            BiFunction<String, Quotation, Formula> formula,
            Quotation quotation,
            BigDecimal amount) {
        Formula live = formula.apply(key, quotation);
        if (live instanceof Formula.Fixed) {
            says.say(key, label, kind, amount);
        } else {
            says.say(key, label, kind, live, amount);
        }
    }

    private static Formula worked(String key, Quotation quotation) {
        return switch (key) {
            case "kitPrice" -> Formula.fixed(quotation.kitPrice());
            case "extras" -> Formula.fixed(quotation.extrasPrice());
            case "discount" -> Formula.fixed(quotation.discount().negate());
            case "tax" -> Formula.fixed(quotation.taxAmount());
            case "total" -> sum(value("net"), value("tax"));
            default -> net(quotation);
        };
    }

    private static Formula net(Quotation quotation) {
        Formula list = quotation.extras().isEmpty() ? value("kitPrice") : sum(value("kitPrice"), value("extras"));
        return quotation.discount().signum() == 0 ? list : sum(list, value("discount"));
    }

    private ParticularsBuilder withoutPrice() {
        String why = pricing.whyNoPrice();
        return why.isEmpty() ? says : says.say("noPrice", "Note", why);
    }

    static ParticularsBuilder masses(CostedBill costed) {
        BigDecimal kit = costed.totals().massKg();
        BigDecimal film = KitFilm.kg(costed.bill(), costed.catalogue().finishes());
        Kind kg = Kind.decimal(2);
        Formula both = sum(cell("masses", "kit", Particulars.VALUE), cell("masses", "film", Particulars.VALUE));
        return Particulars.named("masses")
                .say("kit", "Mass of the kit, kg", kg, total("massExtended"), kit)
                .say("film", "Film of powder, kg", kg, film)
                .say("both", "Mass with film, kg", kg, both, kit.add(film));
    }

    /** On the front page: the same figures, taken from the bill. */
    static ParticularsBuilder shown(OrderPricing pricing) {
        PriceBlock block = new PriceBlock(pricing);
        BigDecimal direct = pricing.costed().totals().cost();
        block.says.say("cost", "Direct cost of the kit", block.money, there("cost"), direct);
        pricing.found().ifPresent(found -> {
            BigDecimal full = found.cost().kit().total();
            block.says.say("full", "Full cost of the kit", block.money, there("full"), full);
            block.price(found, (key, quotation) -> there(key));
        });
        return block.withoutPrice();
    }

    private static Formula value(String key) {
        return cell(NAME, key, Particulars.VALUE);
    }

    private static Formula there(String key) {
        return cell(PageNames.BILL, NAME, key, Particulars.VALUE);
    }

    private static Formula total(String column) {
        return cell("bill", "kit", column);
    }
}
