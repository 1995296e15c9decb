package boltlore.trades.costing.sheets;

import boltlore.catalogue.Part;
import boltlore.measure.PartNumber;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.costing.cost.Element;
import boltlore.trades.costing.cost.Elements;
import boltlore.trades.costing.cost.FullCost;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Made parts with what each costs by element; what is inside an assembly has its own row or is bought. */
final class MadePage {

    private static final List<Element> ELEMENTS = List.of(
            Element.MATERIAL,
            Element.SCRAP,
            Element.LABOUR,
            Element.SET_UP,
            Element.OWN_COATING,
            Element.OUTSIDE_WORK,
            Element.OVERHEAD);

    private MadePage() {}

    static PageBuilder of(FullCost cost, String footer) {
        return Page.named("Made parts")
                .landscape()
                .footer(footer)
                .title("Full cost of made parts")
                .add(table(cost))
                .note(
                        "Each row is the part's own step for all of it in the kit: an assembly's row holds its joining, not what"
                                + " it is joined of. Material is the part master's cost less the labour that 'madeCost' says it"
                                + " holds.");
    }

    private static TableBuilder table(FullCost cost) {
        TableBuilder table = columns(cost.priced().currency());
        cost.made().forEach((number, some) -> fill(table.row(), cost, number, some));
        Elements all = Elements.sum(cost.made().values());
        RowBuilder total = table.total("total", "All made parts");
        ELEMENTS.forEach(element -> total.sum(key(element), all.of(element)));
        total.sum("total", all.total());
        return table;
    }

    private static TableBuilder columns(Currency currency) {
        TableBuilder table = Table.named("made")
                .columns(
                        Column.text("part", "Part"),
                        Column.text("name", "Name").atMost(34),
                        Column.quantity("quantity", "Quantity"));
        ELEMENTS.forEach(element -> table.columns(Column.money(key(element), element.says(), currency)));
        return table.columns(Column.money("total", "Full cost", currency));
    }

    private static void fill(RowBuilder row, FullCost cost, PartNumber number, Elements some) {
        Part part = cost.priced().catalogue().part(number);
        Map<PartNumber, BigDecimal> quantities =
                cost.priced().bill().resolved().kit().quantities();
        row.put("part", number.text()).put("name", part.name().english());
        row.put("quantity", quantities.getOrDefault(number, BigDecimal.ZERO));
        ELEMENTS.forEach(element -> row.put(key(element), some.of(element)));
        row.put("total", some.total());
    }

    private static String key(Element element) {
        return element.name().toLowerCase(Locale.ROOT);
    }
}
