package boltlore.trades.bill.sheets;

import static boltlore.report.Formula.cell;
import static boltlore.report.Formula.fixed;
import static boltlore.report.Formula.product;

import boltlore.bill.Item;
import boltlore.bill.Masses;
import boltlore.catalogue.Customs;
import boltlore.catalogue.Part;
import boltlore.explanation.ItemWords;
import boltlore.report.Formula;
import boltlore.report.RowBuilder;
import boltlore.trades.costing.MinorUnit;
import boltlore.trades.costing.PricedBill;
import boltlore.trades.costing.PricedItem;
import java.math.BigDecimal;
import java.util.Locale;

/** Rows of the costed bill. */
final class BillRows {

    private static final Formula ONE = fixed(BigDecimal.ONE);
    private static final Formula HUNDRED = fixed(BigDecimal.valueOf(100));

    private final PricedBill priced;
    private final ItemWords words;
    private final int coins;

    BillRows(PricedBill priced) {
        this.priced = priced;
        this.words = new ItemWords(priced.bill().order().choices().family());
        this.coins = new MinorUnit(priced.currency()).digits();
    }

    void fill(RowBuilder row, PricedItem of) {
        what(row, of.item());
        mass(row, of);
        cost(row, of);
        trade(row, of.item().part());
        row.put("calledBy", words.calledBy(of.item()));
    }

    private static void what(RowBuilder row, Item item) {
        row.put("level", item.level())
                .put("position", item.position().name().text())
                .put("part", item.part().number().text())
                .put("revision", item.part().revision())
                .put("finish", item.finish())
                .put("name", indent(item.level()) + item.part().name().english())
                .put("quantity", item.quantity())
                .put("unit", item.part().unit())
                .put("source", word(item.part().source()));
    }

    private void mass(RowBuilder row, PricedItem of) {
        Part part = of.item().part();
        BigDecimal each = Masses.eachKg(part, priced.catalogue()::part);
        row.put("massEach", each);
        if (!part.isAssembly()) {
            row.put("massExtended", product(cell("quantity"), cell("massEach")), of.massKg());
        }
    }

    private void cost(RowBuilder row, PricedItem of) {
        row.put("unitCost", of.unitCost())
                .put("extended", amount(row, of.item().part()).rounded(coins), of.extended());
        if (of.item().coated()) {
            row.put("coating", of.coating());
        }
    }

    private static Formula amount(RowBuilder row, Part part) {
        Formula amount = product(cell("quantity"), cell("unitCost"));
        if (part.scrapPercent().signum() == 0) {
            return amount;
        }
        row.put("scrap", part.scrapPercent());
        return amount.over(ONE.minus(cell("scrap").over(HUNDRED)));
    }

    private static void trade(RowBuilder row, Part part) {
        row.put("leadDays", part.leadDays());
        Customs customs = part.customs();
        if (customs != null) {
            row.put("hs", customs.hs()).put("origin", customs.origin());
        }
        if (part.tracked() != null) {
            row.put("tracked", word(part.tracked()));
        }
    }

    /** Parts stand to the right of what they are in. */
    private static String indent(int level) {
        return "· ".repeat(level - 1);
    }

    static String word(Enum<?> name) {
        return name.name().toLowerCase(Locale.ROOT);
    }
}
