package boltlore.trades.bill.sheets;

import static boltlore.report.Formula.cell;
import static boltlore.report.Formula.fixed;
import static boltlore.report.Formula.product;
import static boltlore.report.Formula.sum;

import boltlore.report.Formula;
import boltlore.report.Kind;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.trades.coating.KitFilm;
import boltlore.trades.costing.MinorUnit;
import boltlore.trades.costing.Price;
import boltlore.trades.costing.PricedBill;
import boltlore.trades.costing.Totals;
import java.math.BigDecimal;

/** From cost to price, and the masses, worked out below the bill and shown again on the front page. */
final class PriceBlock {

    private static final String NAME = "price";
    private static final Formula HUNDRED = fixed(BigDecimal.valueOf(100));

    private PriceBlock() {}

    /** On the bill's own page, as live formulas over its total row. */
    static ParticularsBuilder worked(PricedBill priced) {
        Kind money = Kind.money(priced.currency());
        Totals totals = priced.totals();
        ParticularsBuilder says = Particulars.named(NAME)
                .say("own", "Parts and making", money, total("extended"), totals.own())
                .say("coating", "Coating", money, total("coating"), totals.coating());
        kit(says, priced, money);
        Formula all = sum(value("price"), value("extras"));
        return says.say("extras", "Extras", money, priced.extrasPrice())
                .say("total", "Price of the order", money, all, priced.totalPrice());
    }

    private static void kit(ParticularsBuilder says, PricedBill priced, Kind money) {
        Price kit = priced.kitPrice();
        int digits = new MinorUnit(priced.currency()).digits();
        Kind percent = Kind.percent(2);
        Formula share = value("markUpPercent").over(HUNDRED);
        Formula factor = sum(fixed(BigDecimal.ONE), share);
        Formula price = product(value("cost"), factor).rounded(digits);
        Formula margin = product(share.over(factor), HUNDRED).rounded(2);
        says.say("cost", "Cost of the kit", money, sum(value("own"), value("coating")), kit.cost())
                .say("markUpPercent", markUpLabel(priced), percent, kit.markUpPercent())
                .say("markUp", "Mark-up", money, value("price").minus(value("cost")), kit.markUp())
                .say("price", "Price of the kit", money, price, kit.price())
                .say("margin", "Margin on price", percent, margin, kit.marginPercent());
    }

    static ParticularsBuilder masses(PricedBill priced) {
        BigDecimal kit = priced.totals().massKg();
        BigDecimal film = KitFilm.kg(priced.bill(), priced.catalogue().finishes());
        Kind kg = Kind.decimal(2);
        Formula both = sum(cell("masses", "kit", Particulars.VALUE), cell("masses", "film", Particulars.VALUE));
        return Particulars.named("masses")
                .say("kit", "Mass of the kit, kg", kg, total("massExtended"), kit)
                .say("film", "Film of powder, kg", kg, film)
                .say("both", "Mass with film, kg", kg, both, kit.add(film));
    }

    /** On the front page: the same figures, taken from the bill. */
    static ParticularsBuilder shown(PricedBill priced) {
        Kind money = Kind.money(priced.currency());
        Price kit = priced.kitPrice();
        return Particulars.named(NAME)
                .say("cost", "Cost of the kit", money, there("cost"), kit.cost())
                .say("markUpPercent", markUpLabel(priced), Kind.percent(2), there("markUpPercent"), kit.markUpPercent())
                .say("price", "Price of the kit", money, there("price"), kit.price())
                .say("margin", "Margin on price", Kind.percent(2), there("margin"), kit.marginPercent())
                .say("extras", "Extras", money, there("extras"), priced.extrasPrice())
                .say("total", "Price of the order", money, there("total"), priced.totalPrice());
    }

    private static String markUpLabel(PricedBill priced) {
        boolean partner = !priced.bill().order().partner().isEmpty();
        return partner ? "Partner's mark-up on cost" : "Mark-up on cost";
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
