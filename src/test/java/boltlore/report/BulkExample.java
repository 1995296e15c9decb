package boltlore.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;

/**
 * The sheets of one order of the usual size, for measuring and for looking at: a bill of 400 rows with a front page and
 * views, a contents list and a picking list of 250 rows with eight bag pages, a coat batch of 80 rows. All invented.
 */
public final class BulkExample {

    private static final Currency EURO = Currency.getInstance("EUR");
    private static final LocalDate DATED = LocalDate.of(2026, 3, 12);
    private static final int GROUPS = 12;
    private static final String HIGH_VOLTAGE =
            "High voltage can kill: only qualified people may work on it, with the pack"
                    + " isolated, locked off and proved dead, and always by your local codes.";

    private BulkExample() {}

    public static List<Report> workbooks() {
        return List.of(bill(), contents(), picking(), coat());
    }

    static Report bill() {
        return book("bill", "Costed bill of materials")
                .page(front())
                .page(Page.named("Bill").landscape().add(billTable()).frozen(3).footer("Order ED-1042"))
                .page(Page.named("To buy").landscape().add(list("buy", 250, 14)).footer("Order ED-1042"))
                .page(Page.named("To make")
                        .landscape()
                        .add(list("make", 150, 14))
                        .footer("Order ED-1042"))
                .build();
    }

    static Report contents() {
        return book("contents", "Contents")
                .page(Page.named("Contents").title("Contents").add(list("contents", 250, 8)))
                .build();
    }

    static Report picking() {
        ReportBuilder book = book("picking", "Picking list")
                .page(Page.named("Picking")
                        .landscape()
                        .title("Picking list")
                        .caution("High voltage", HIGH_VOLTAGE)
                        .add(byHand("picking", 250))
                        .signatures("Picked by", "Second count by"));
        for (int bag = 1; bag <= 8; bag++) {
            book.page(Page.named("Bag " + bag).title("Bag " + bag).add(byHand("bag", 30)));
        }
        return book.build();
    }

    static Report coat() {
        return book("coat", "Powder-coat batch sheet")
                .page(Page.named("Batch").landscape().title("Powder-coat batch").add(list("parts", 80, 18)))
                .build();
    }

    private static ReportBuilder book(String file, String title) {
        return Report.named(file, title)
                .about("Order ED-1042")
                .by("Ostrevale Kit Works")
                .dated(DATED);
    }

    private static PageBuilder front() {
        TableBuilder shares = Table.named("sub-systems")
                .columns(
                        Column.text("subSystem", "Sub-system"),
                        Column.money("cost", "Cost", EURO),
                        Column.decimal("mass", "Mass", 2).in("kg"));
        for (int group = 0; group < GROUPS; group++) {
            String subtotal = "subtotal-g" + group;
            shares.row("g" + group)
                    .put("subSystem", "Sub-system number " + group)
                    .put("cost", Formula.cell("Bill", "bill", subtotal, "cost"), groupCost(group))
                    .put("mass", Formula.cell("Bill", "bill", subtotal, "mass"), groupMass(group));
        }
        shares.total("kit", "Kit").sum("cost", kitCost()).sum("mass", kitMass());
        return Page.named("Front")
                .title("Costed bill of materials")
                .add(Particulars.named("order")
                        .say("order", "Order", "ED-1042")
                        .say("customer", "Customer", "Corran Vale Growers' Co-operative")
                        .say("due", "Due", LocalDate.of(2026, 4, 30))
                        .say("vehicle", "Vehicle", "Small farm pick-up, built 1967-05-02, left-hand drive"))
                .caution("High voltage", HIGH_VOLTAGE)
                .add(shares)
                .charts(
                        new BarChart("Cost by sub-system", "Cost (EUR)", "sub-systems", "subSystem", "cost"),
                        new BarChart("Mass by sub-system", "Mass (kg)", "sub-systems", "subSystem", "mass"))
                .signatures("Checked by")
                .footer("Order ED-1042");
    }

    private static TableBuilder billTable() {
        TableBuilder table = Table.named("bill")
                .columns(
                        Column.whole("level", "Level"),
                        Column.text("part", "Part number"),
                        Column.text("revision", "Rev."),
                        Column.text("name", "Name").atMost(30),
                        Column.text("position", "Position").atMost(20),
                        Column.text("finish", "Finish").atMost(14),
                        Column.decimal("quantity", "Quantity", 2),
                        Column.text("unit", "Unit"),
                        Column.text("source", "Make or buy"),
                        Column.decimal("massEach", "Mass each", 3).in("kg"),
                        Column.decimal("mass", "Mass", 3).in("kg"),
                        Column.money("unitCost", "Unit cost", EURO),
                        Column.percent("scrap", "Scrap", 1),
                        Column.money("cost", "Cost", EURO),
                        Column.money("coating", "Coating", EURO),
                        Column.whole("lead", "Lead time").in("days"),
                        Column.text("hs", "HS code"),
                        Column.text("origin", "Origin"),
                        Column.text("tracked", "Tracked"),
                        Column.text("supplier", "Supplier").atMost(18),
                        Column.text("drawing", "Drawing"),
                        Column.text("stage", "Stage"),
                        Column.text("bag", "Bag"),
                        Column.text("choice", "Needed by").atMost(28));
        for (int group = 0; group < GROUPS; group++) {
            table.group("g" + group, "Sub-system number " + group);
            for (int i = group * 32; i < (group + 1) * 32; i++) {
                fill(table.row(), i);
            }
            table.subtotal("Sub-system number " + group + ", sum")
                    .sum("mass", groupMass(group))
                    .sum("cost", groupCost(group));
        }
        table.total("kit", "Kit").sumOfSubtotals("mass", kitMass()).sumOfSubtotals("cost", kitCost());
        return table;
    }

    private static void fill(RowBuilder row, int i) {
        row.put("level", 1 + i % 3)
                .put("part", "BR-" + (1000 + i))
                .put("revision", "B")
                .put("name", "Bracket for the coolant pump, front, number " + i)
                .put("position", "cooling-motor-" + i % 40)
                .put("finish", i % 4 == 0 ? "satin black" : "")
                .put("quantity", quantity(i))
                .put("unit", "each")
                .put("source", i % 3 == 0 ? "make" : "buy")
                .put("massEach", massEach(i))
                .put("mass", Formula.product(Formula.cell("quantity"), Formula.cell("massEach")), mass(i))
                .put("unitCost", unitCost(i))
                .put("scrap", new BigDecimal("2.5"))
                .put("cost", costFormula(), cost(i))
                .put("coating", new BigDecimal("1.20"))
                .put("lead", 5 + i % 20)
                .put("hs", "8708.99")
                .put("origin", "DE")
                .put("tracked", i % 9 == 0 ? "serial" : "")
                .put("supplier", "Corraloch Castings")
                .put("drawing", "D-" + (2000 + i))
                .put("stage", "rear")
                .put("bag", "B" + i % 8)
                .put("choice", "Drive unit 80 kW; left-hand drive");
    }

    private static Formula costFormula() {
        Formula scrap = Formula.sum(
                Formula.fixed(BigDecimal.ONE), Formula.cell("scrap").over(Formula.fixed(new BigDecimal("100"))));
        return Formula.product(Formula.cell("quantity"), Formula.cell("unitCost"), scrap)
                .rounded(2);
    }

    private static TableBuilder list(String name, int rows, int columns) {
        TableBuilder table = Table.named(name);
        for (int i = 0; i < columns; i++) {
            table.columns(i % 3 == 0 ? Column.text("c" + i, "Text " + i) : Column.decimal("c" + i, "Figure " + i, 2));
        }
        for (int row = 0; row < rows; row++) {
            RowBuilder filled = table.row();
            for (int i = 0; i < columns; i++) {
                if (i % 3 == 0) {
                    filled.put("c" + i, "Text of part " + row);
                } else {
                    filled.put("c" + i, BigDecimal.valueOf(row * 100L + i, 2));
                }
            }
        }
        return table;
    }

    private static TableBuilder byHand(String name, int rows) {
        TableBuilder table = Table.named(name)
                .columns(
                        Column.text("bin", "Bin"),
                        Column.text("part", "Part number"),
                        Column.text("name", "Name").atMost(30),
                        Column.whole("total", "Total"),
                        Column.text("split", "Split"),
                        Column.tick("picked", "Picked"),
                        Column.tick("second", "Second count"),
                        Column.blank("short", "Short"),
                        Column.blank("serial", "Serial or lot"));
        for (int row = 0; row < rows; row++) {
            table.row()
                    .put("bin", "A" + row / 20 + "-" + row % 20)
                    .put("part", "BR-" + (1000 + row))
                    .put("name", "Bracket for the coolant pump, front, number " + row)
                    .put("total", 2 + row % 10)
                    .put("split", "front 4, cabin 8");
        }
        return table;
    }

    private static BigDecimal quantity(int i) {
        return BigDecimal.valueOf(1 + i % 7);
    }

    private static BigDecimal massEach(int i) {
        return BigDecimal.valueOf(125L + i * 7L, 3);
    }

    private static BigDecimal mass(int i) {
        return quantity(i).multiply(massEach(i));
    }

    private static BigDecimal unitCost(int i) {
        return BigDecimal.valueOf(340L + i * 13L, 2);
    }

    private static BigDecimal cost(int i) {
        return quantity(i)
                .multiply(unitCost(i))
                .multiply(new BigDecimal("1.025"))
                .setScale(2, RoundingMode.HALF_UP);
    }

    private static BigDecimal groupCost(int group) {
        return sum(group * 32, (group + 1) * 32, BulkExample::cost);
    }

    private static BigDecimal groupMass(int group) {
        return sum(group * 32, (group + 1) * 32, BulkExample::mass);
    }

    private static BigDecimal kitCost() {
        return sum(0, GROUPS * 32, BulkExample::cost);
    }

    private static BigDecimal kitMass() {
        return sum(0, GROUPS * 32, BulkExample::mass);
    }

    private static BigDecimal sum(int from, int to, java.util.function.IntFunction<BigDecimal> each) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int i = from; i < to; i++) {
            sum = sum.add(each.apply(i));
        }
        return sum;
    }
}
