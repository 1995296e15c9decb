package boltlore.trades.buying;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.measure.Money;
import boltlore.measure.PartNumber;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.Phrases;
import boltlore.report.Report;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.report.Words;
import boltlore.trades.costing.MinorUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;

/** A purchase order as it goes to the supplier, in the supplier's language, and the list by which its goods come in. */
public final class PurchaseOrderSheet {

    private static final String NAME = "purchase-order";

    private PurchaseOrderSheet() {}

    /** What is ordered; costs are in the currency of the order. */
    public record Order(String number, String supplier, String currency, LocalDate on, List<OrderLine> lines) {}

    /** One line of it. */
    public record OrderLine(
            String part, String orderCode, BigDecimal quantity, String unit, BigDecimal unitCost, LocalDate due) {}

    public static Report compose(Catalogue catalogue, String language, Order order) {
        Phrases words = Phrases.of(PurchaseOrderSheet.class, NAME, language);
        Currency currency = Currency.getInstance(order.currency());
        BigDecimal total =
                order.lines().stream().map(line -> cost(line, currency)).reduce(BigDecimal.ZERO, BigDecimal::add);
        String title = words.say("title", order.number());
        return Report.named(NAME, title)
                .about(order.supplier())
                .by(catalogue.workshop().name())
                .dated(order.on())
                .in(language)
                .glance(Particulars.named("order")
                        .say("purchase", words.say("number"), order.number())
                        .say("supplier", words.say("supplier"), order.supplier())
                        .say("total", words.say("total"), Kind.money(currency, Money.digits(currency)), total)
                        .build())
                .page(Page.named(words.say("page"))
                        .in(language)
                        .footer(title)
                        .title(title)
                        .add(Particulars.named("head")
                                .say("buyer", words.say("buyer"), buyer(catalogue))
                                .say("supplier", words.say("supplier"), order.supplier())
                                .say("on", words.say("on"), words.day(order.on())))
                        .add(lines(catalogue, words, language, order, currency, total))
                        .note(words.say("note"))
                        .signatures(words.say("signed")))
                .page(goodsInPage(catalogue, order))
                .build();
    }

    private static String buyer(Catalogue catalogue) {
        return catalogue.workshop().name() + ", " + catalogue.workshop().place();
    }

    private static PageBuilder goodsInPage(Catalogue catalogue, Order order) {
        String language = catalogue.workshop().language();
        return Page.named("Goods in")
                .in(Words.of(language, PurchaseOrderSheet.class))
                .landscape()
                .footer("Goods in, " + order.number())
                .title("Goods in, " + order.number() + ", " + order.supplier())
                .add(goodsIn(catalogue, order))
                .note("Write what came; a part that is not on this list is put aside and the supplier asked."
                        + " Lots and serial numbers as they stand on the goods.");
    }

    private static BigDecimal cost(OrderLine line, Currency currency) {
        return new MinorUnit(currency).round(line.quantity().multiply(line.unitCost()));
    }

    private static String name(Catalogue catalogue, OrderLine line, String language) {
        Part part = catalogue.parts().get(new PartNumber(line.part()));
        return part == null ? line.part() : part.name().in(language);
    }

    private static TableBuilder lines(
            Catalogue catalogue, Phrases words, String language, Order order, Currency currency, BigDecimal total) {
        int digits = new MinorUnit(currency).digits(order.lines().stream().map(OrderLine::unitCost), 4);
        TableSpec<OrderLine> spec = TableSpec.<OrderLine>named("lines")
                .text("code", words.say("code"), 16, OrderLine::orderCode)
                .text("part", words.say("part"), 14, OrderLine::part)
                .text("name", words.say("name"), 34, line -> name(catalogue, line, language))
                .quantity("quantity", words.say("quantity"), "", OrderLine::quantity)
                .text("unit", words.say("unit"), line -> words.unit(line.unit(), line.quantity()))
                .column(
                        new Column("unitCost", words.say("unitCost"), Kind.money(currency, digits)),
                        line -> Cell.of(line.unitCost()))
                .column(Column.money("cost", words.say("cost"), currency), line -> Cell.of(cost(line, currency)))
                .date("due", words.say("due"), OrderLine::due);
        TableBuilder table = spec.empty();
        order.lines().forEach(line -> spec.add(table, "", line));
        table.total("all", words.say("total")).sum("cost", total);
        return table;
    }

    private static TableBuilder goodsIn(Catalogue catalogue, Order order) {
        return TableSpec.<OrderLine>named("goods-in")
                .text("part", "Part number", 14, OrderLine::part)
                .text(
                        "name",
                        "Name",
                        34,
                        line -> name(catalogue, line, catalogue.workshop().language()))
                .text("bin", "Bin", line -> bin(catalogue, line))
                .quantity("quantity", "Ordered", "", OrderLine::quantity)
                .text("unit", "Unit", OrderLine::unit)
                .box(Column.blank("came", "Came"))
                .box(Column.blank("lot", "Lot or serial numbers"))
                .box(Column.tick("sound", "Sound"))
                .of(order.lines());
    }

    private static String bin(Catalogue catalogue, OrderLine line) {
        Part part = catalogue.parts().get(new PartNumber(line.part()));
        return part == null ? "" : part.bin();
    }
}
