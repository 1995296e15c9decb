package boltlore.report;

import static boltlore.report.Formula.cell;
import static boltlore.report.Formula.fixed;
import static boltlore.report.Formula.product;
import static boltlore.report.Formula.sumWhere;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;

/** A short bill on two pages that uses everything the model can say. All names and prices are invented. */
public final class WorkedExample {

    private static final Currency EURO = Currency.getInstance("EUR");
    private static final BigDecimal MARK_UP = new BigDecimal("38");

    private record Part(String number, String name, String source, String quantity, String unitCost, String kg) {
        BigDecimal cost() {
            return new BigDecimal(quantity).multiply(new BigDecimal(unitCost)).setScale(2, RoundingMode.HALF_UP);
        }

        BigDecimal mass() {
            return new BigDecimal(quantity).multiply(new BigDecimal(kg));
        }
    }

    private record SubSystem(String key, String says, List<Part> parts) {
        BigDecimal cost() {
            return parts.stream().map(Part::cost).reduce(BigDecimal.ZERO, BigDecimal::add);
        }

        BigDecimal mass() {
            return parts.stream().map(Part::mass).reduce(BigDecimal.ZERO, BigDecimal::add);
        }
    }

    private static final List<SubSystem> KIT = List.of(
            new SubSystem(
                    "drive",
                    "Drive unit",
                    List.of(
                            new Part("DU-100", "Drive unit, 80 kW, with reduction gear", "buy", "1", "3480.00", "64.5"),
                            new Part(
                                    "CR-210",
                                    "Cradle for the drive unit, front cross-member, welded",
                                    "make",
                                    "1",
                                    "412.355",
                                    "18.25"),
                            new Part("MT-014", "Rubber mount, 60 Shore A", "buy", "3", "14.90", "0.41"))),
            new SubSystem(
                    "battery",
                    "Battery",
                    List.of(
                            new Part("BX-300", "Battery box, under floor", "make", "2", "655.00", "27.8"),
                            new Part("HV-025", "High-voltage cable, orange, 25 mm²", "buy", "7.35", "11.235", "0.34"))),
            new SubSystem(
                    "charging",
                    "Charging",
                    List.of(
                            new Part("OC-011", "On-board charger, 11 kW", "buy", "1", "890.00", "9.6"),
                            new Part("IN-T2", "Inlet, Type 2, with lock", "buy", "1", "164.50", "1.15"))));

    private WorkedExample() {}

    /** The whole of it. */
    public static Report workbook() {
        return Report.named("bill", "Costed bill of materials")
                .about("Order ED-1042, small farm pick-up")
                .by("Ostrevale Kit Works")
                .dated(LocalDate.of(2026, 3, 12))
                .page(front())
                .page(bill())
                .build();
    }

    private static PageBuilder front() {
        TableBuilder shares = Table.named("sub-systems")
                .columns(
                        Column.text("subSystem", "Sub-system"),
                        Column.money("cost", "Cost", EURO),
                        Column.decimal("mass", "Mass", 2).in("kg"));
        for (SubSystem subSystem : KIT) {
            String subtotal = "subtotal-" + subSystem.key();
            shares.row(subSystem.key())
                    .put("subSystem", subSystem.says())
                    .put("cost", cell("Bill", "bill", subtotal, "cost"), subSystem.cost())
                    .put("mass", cell("Bill", "bill", subtotal, "mass"), subSystem.mass());
        }
        shares.total("kit", "Kit").sum("cost", cost()).sum("mass", mass());
        return Page.named("Front")
                .title("Costed bill of materials")
                .add(Particulars.named("order")
                        .say("order", "Order", "ED-1042")
                        .say("customer", "Customer", "=cmd|' /C calc'!A0")
                        .say("due", "Due", LocalDate.of(2026, 4, 30))
                        .leave("checkedBy", "Checked by"))
                .caution(
                        "High voltage",
                        "High voltage can kill: only qualified people may work on it, with the pack isolated, locked off and"
                                + " proved dead, and always by your local codes.")
                .heading("What it comes to")
                .add(shares)
                .add(Particulars.named("price")
                        .say("cost", "Cost", Kind.money(EURO), cell("sub-systems", "kit", "cost"), cost())
                        .say("markUp", "Mark-up", Kind.percent(1), MARK_UP)
                        .say("price", "Price", Kind.money(EURO), priceFormula(), price()))
                .charts(
                        new BarChart("Cost by sub-system", "Cost (EUR)", "sub-systems", "subSystem", "cost"),
                        new BarChart("Mass by sub-system", "Mass (kg)", "sub-systems", "subSystem", "mass"))
                .signatures("Checked by", "Released by")
                .footer("Order ED-1042 · catalogue 7f3a91c2");
    }

    private static PageBuilder bill() {
        TableBuilder table = Table.named("bill")
                .columns(
                        Column.text("part", "Part number"),
                        Column.text("name", "Name"),
                        Column.text("source", "Make or buy").atMost(8),
                        Column.decimal("quantity", "Quantity", 2),
                        new Column("unitCost", "Unit cost", Kind.money(EURO, 3)),
                        Column.money("cost", "Cost", EURO),
                        Column.decimal("mass", "Mass", 2).in("kg"),
                        Column.tick("picked", "Picked"),
                        Column.blank("serial", "Serial or lot"));
        for (SubSystem subSystem : KIT) {
            table.group(subSystem.key(), subSystem.says());
            subSystem.parts().forEach(part -> fill(table.row(part.number()), part));
            table.subtotal(subSystem.says() + ", sum")
                    .sum("cost", subSystem.cost())
                    .sum("mass", subSystem.mass());
        }
        for (String source : List.of("buy", "make")) {
            table.subtotal("sum-" + source, "All of it to")
                    .put("source", source)
                    .put("cost", sumWhere("cost", "source"), costOf(source));
        }
        table.total("kit", "Kit").sumOfSubtotals("cost", cost());
        return Page.named("Bill")
                .landscape()
                .heading("Bill by sub-system")
                .add(table)
                .note("Costs are rounded half up to the cent in each row; sums add the rounded rows.")
                .frozen(1)
                .footer("Order ED-1042 · catalogue 7f3a91c2");
    }

    private static void fill(RowBuilder row, Part part) {
        row.put("part", part.number())
                .put("name", part.name())
                .put("source", part.source())
                .put("quantity", new BigDecimal(part.quantity()))
                .put("unitCost", new BigDecimal(part.unitCost()))
                .put("cost", product(cell("quantity"), cell("unitCost")).rounded(2), part.cost())
                .put("mass", part.mass());
    }

    private static Formula priceFormula() {
        Formula factor = Formula.sum(
                fixed(BigDecimal.ONE),
                cell("price", "markUp", Particulars.VALUE).over(fixed(new BigDecimal("100"))));
        return product(cell("price", "cost", Particulars.VALUE), factor).rounded(2);
    }

    private static BigDecimal price() {
        return cost().multiply(new BigDecimal("1.38")).setScale(2, RoundingMode.HALF_UP);
    }

    private static BigDecimal cost() {
        return KIT.stream().map(SubSystem::cost).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal mass() {
        return KIT.stream().map(SubSystem::mass).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal costOf(String source) {
        return KIT.stream()
                .flatMap(subSystem -> subSystem.parts().stream())
                .filter(part -> part.source().equals(source))
                .map(Part::cost)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
