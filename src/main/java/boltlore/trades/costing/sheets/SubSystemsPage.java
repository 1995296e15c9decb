package boltlore.trades.costing.sheets;

import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.costing.cost.Element;
import boltlore.trades.costing.cost.Elements;
import boltlore.trades.costing.cost.FullCost;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Locale;

/** The full cost of the kit by sub-system and element; an element that costs nothing has no column. */
final class SubSystemsPage {

    private SubSystemsPage() {}

    static PageBuilder of(FullCost cost, String footer) {
        return Page.named("Sub-systems")
                .landscape()
                .footer(footer)
                .title("Full cost by sub-system")
                .add(table(cost));
    }

    private static TableBuilder table(FullCost cost) {
        List<Element> elements = Arrays.stream(Element.values())
                .filter(element -> cost.kit().of(element).signum() != 0)
                .toList();
        TableBuilder table = columns(elements, cost.priced().currency());
        cost.bySubSystem()
                .forEach((subSystem, some) -> fill(table.row().put("sub-system", subSystem), elements, some)
                        .put("total", some.total()));
        RowBuilder total = table.total("total", "The kit");
        elements.forEach(element -> total.sum(key(element), cost.kit().of(element)));
        total.sum("total", cost.kit().total());
        return table;
    }

    private static TableBuilder columns(List<Element> elements, Currency currency) {
        TableBuilder table = Table.named("sub-systems").columns(Column.text("sub-system", "Sub-system"));
        elements.forEach(element -> table.columns(Column.money(key(element), element.says(), currency)));
        return table.columns(Column.money("total", "Full cost", currency));
    }

    private static RowBuilder fill(RowBuilder row, List<Element> elements, Elements some) {
        elements.forEach(element -> row.put(key(element), some.of(element)));
        return row;
    }

    private static String key(Element element) {
        return element.name().toLowerCase(Locale.ROOT);
    }
}
