package boltlore.trades.shipping;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.Bill;
import boltlore.bill.Costs;
import boltlore.catalogue.Catalogue;
import boltlore.demo.Demo;
import boltlore.report.Approved;
import boltlore.report.Block;
import boltlore.report.Heading;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.Table;
import boltlore.report.drawing.Mark;
import boltlore.report.html.HtmlWriter;
import boltlore.report.json.JsonWriter;
import boltlore.report.text.TextWriter;
import boltlore.resolution.Resolver;
import boltlore.resolution.rules.RuleResolver;
import boltlore.trades.bill.sheets.BillReport;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.Pricing;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.QuoteRequest;
import boltlore.trades.picking.PickingList;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The shipping papers")
class ShippingReportTest {

    private static final int WIDE = 200;
    private static final Resolver RESOLVER = new RuleResolver(Demo.catalogue());

    private static CostedBill priced(String order) {
        return Pricing.cost(Demo.bill(order), Demo.catalogue());
    }

    private static Shipment shipment(String order, By by, String... to) {
        CostedBill costed = priced(order);
        Bill bill = costed.bill();
        PickingList list = PickingList.of(RESOLVER.plan(bill.order().family()), bill);
        return Shipper.ship(costed, quoted(costed), list, new Route(by, List.of(to)));
    }

    /** At the price of a quotation on the day of the order. */
    private static SellingPrice quoted(CostedBill costed) {
        LocalDate placed = Objects.requireNonNull(costed.bill().order().placed());
        return SellingPrice.of(OrderPricing.of(costed.bill(), costed.catalogue(), new QuoteRequest(placed, null, null)))
                .orElseThrow();
    }

    @Test
    void no_heading_stands_with_nothing_under_it() {
        List<Block> blocks =
                sheet(shipment("bl-2001", By.ROAD, "IE")).pages().get(0).blocks();
        assertThat(blocks).anyMatch(Heading.class::isInstance);
        for (int i = 1; i < blocks.size(); i++) {
            assertThat(blocks.get(i - 1) instanceof Heading && blocks.get(i) instanceof Heading)
                    .as(blocks.get(i).toString())
                    .isFalse();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "fr"})
    void a_telephone_number_is_not_broken_on_a_label(String language) {
        Shipment shipment = shipment("bl-2001", By.ROAD, "IE");
        String phone = shipment.shipping().consignor().phone();
        assertThat(shipment.crates())
                .filteredOn(crate -> crate.load().dangerous())
                .isNotEmpty()
                .allSatisfy(crate -> assertThat(
                                LabelDrawing.draw(List.of(crate), shipment, LoadWords.of(shipment, language))
                                        .marks())
                        .filteredOn(mark -> mark instanceof Mark.Lettering words
                                && words.text().replace('\u00a0', ' ').contains(phone))
                        .as("the sender's line and whom to call")
                        .hasSize(2));
    }

    private static Report sheet(Shipment shipment) {
        Catalogue catalogue = Demo.catalogue();
        return ShippingReport.compose(shipment, new Consignment(List.of(shipment)), catalogue.finishes());
    }

    private static List<Report> papers(Shipment shipment) {
        return ShippingReport.forCustomer(shipment, Demo.catalogue().finishes());
    }

    private static String text(Report report) {
        return new TextWriter(WIDE).text(report);
    }

    /** What stays in the house, and what leaves it. */
    private static String text(Shipment shipment) {
        return text(sheet(shipment))
                + papers(shipment).stream().map(ShippingReportTest::text).collect(Collectors.joining());
    }

    /** Wrapped lines put together again. */
    private static String words(Shipment shipment) {
        return text(shipment).replaceAll("[\\s|]+", " ");
    }

    /** The partner who receives it sits in Australia. */
    @Test
    void an_order_that_goes_overseas_has_no_draft_by_the_rules_of_the_road_until_its_way_is_said() {
        Shipment unsaid = shipment("bl-1010", By.ROAD);
        assertThat(unsaid.route().to()).containsExactly("AU");
        assertThat(new TextWriter(WIDE).text(sheet(unsaid)))
                .contains("not decided: overseas")
                .doesNotContain("ADR 2025", "exemption applies");
        assertThat(papers(unsaid)).extracting(Report::file).doesNotContain("dangerous-goods");
        assertThat(papers(shipment("bl-1010", By.SEA))).extracting(Report::file).contains("dangerous-goods");
        assertThat(papers(shipment("bl-2002", By.ROAD, "GB")))
                .extracting(Report::file)
                .contains("dangerous-goods");
    }

    @Test
    void a_demo_order_reads_as_a_person_has_approved_it() {
        Approved.check("trades/shipping/bl-2001", text(shipment("bl-2001", By.ROAD, "GB")));
    }

    @Test
    void have_a_page_of_crates_with_what_to_look_at_dangerous_goods_and_labels() {
        assertThat(sheet(shipment("bl-2001", By.ROAD, "GB")).pages())
                .extracting(Page::name)
                .startsWith("Crates", "Dangerous goods", "Labels 1");
    }

    @Test
    void leave_the_house_in_files_of_their_own_with_an_invoice_only_where_customs_are_passed() {
        assertThat(papers(shipment("bl-2001", By.ROAD, "GB")))
                .extracting(Report::file)
                .containsExactly("packing-list", "pro-forma-invoice", "dangerous-goods");
        assertThat(papers(shipment("bl-2001", By.ROAD, "FR")))
                .extracting(Report::file)
                .containsExactly("packing-list", "dangerous-goods");
        assertThat(papers(new ShippedKit().part("A", "5", 1).shipment()))
                .extracting(Report::file)
                .containsExactly("packing-list");
    }

    /** ADR 5.4.1.1.1, as published, has 'UN 1098 ALLYL ALCOHOL, 6.1 (3), I, (C/D)' as its example of the order. */
    @Test
    void describe_dangerous_goods_in_the_order_of_the_road_rules() {
        assertThat(text(papers(shipment("bl-2001", By.ROAD, "GB")).get(2)))
                .contains("UN 3480 LITHIUM ION BATTERIES, 9, (E)")
                .contains("UN 2800 BATTERIES, WET, NON-SPILLABLE, 8, (E)")
                .contains("Thistle Bank Farm");
        assertThat(text(papers(shipment("bl-2001", By.SEA, "GB")).get(2)))
                .as("no tunnel code at sea, but the sea's declaration")
                .contains("UN 3480 LITHIUM ION BATTERIES, 9 ")
                .contains("I hereby declare");
    }

    @Test
    void have_an_invoice_of_which_no_line_follows_from_costs() {
        Shipment shipment = shipment("bl-1008", By.SEA, "US");
        for (CustomsLine line : shipment.customs()) {
            BigDecimal perKg = CustomsMaker.perKg(shipment.selling(), line.hs());
            assertThat(shipment.selling().customsValue(line.hs())).as(line.hs()).isPresent();
            assertThat(perKg).isPositive();
        }
        List<BigDecimal> shares = LargestRemainder.shares(
                Objects.requireNonNull(shipment.price()).kit(),
                shipment.customs().stream()
                        .map(line -> line.goods().stream()
                                .map(goods -> goods.kg(goods.quantity()))
                                .reduce(BigDecimal.ZERO, BigDecimal::add)
                                .multiply(CustomsMaker.perKg(shipment.selling(), line.hs())))
                        .toList(),
                shipment.price().currency());
        assertThat(shipment.customs()).extracting(CustomsLine::value).containsExactlyElementsOf(shares);
        assertThat(text(papers(shipment).get(1)))
                .contains("PF-BL-1008-1", "IE0000000XX", "FCA Tannery Row 4", "Silver Creek Laundry");
    }

    @Test
    void have_no_dangerous_goods_page_where_there_are_none() {
        assertThat(sheet(new ShippedKit().part("A", "5", 1).shipment()).pages())
                .extracting(Page::name)
                .doesNotContain("Dangerous goods");
    }

    @Test
    void say_that_a_trained_person_signs_and_what_can_hurt() {
        assertThat(words(shipment("bl-1001", By.ROAD, "FR")))
                .contains("DRAFT – dangerous goods")
                .contains("A trained and appointed person checks every entry")
                .contains("Crates crush feet and backs")
                .contains("Lithium batteries can burn and vent poisonous gas")
                .contains("your local rules for lifting")
                .contains("Classified and checked by (adviser)");
    }

    @Test
    void say_what_lithium_means_by_air_and_not_by_road() {
        String cargo = "cargo aircraft only, forbidden on passenger aircraft";
        assertThat(words(shipment("bl-2001", By.AIR, "US"))).contains(cargo).contains("never as UN 3556");
        assertThat(words(shipment("bl-2001", By.ROAD, "FR")))
                .doesNotContain(cargo)
                .contains("never as UN 3556");
    }

    @Test
    void list_the_packing_instructions_of_the_way_they_travel() {
        String damaged = "P908 or P911";
        assertThat(words(shipment("bl-2001", By.AIR, "US")))
                .contains("lithium batteries, ICAO Technical Instructions 2025-2026", "965, section IA")
                .doesNotContain("P903", damaged);
        assertThat(words(shipment("bl-2001", By.SEA, "US")))
                .contains("lithium batteries, IMDG Code, amendment 42-24", "P903(1)", damaged)
                .doesNotContain("965, section IA");
    }

    @Test
    void ask_for_the_statement_of_special_provision_310_with_a_small_run() {
        String statement = "'Transport in accordance with special provision 310'";
        ShippedKit pack = new ShippedKit().battery("PACK", "20", "3000");
        assertThat(words(pack.shipment())).doesNotContain(statement);
        assertThat(words(pack.smallRun("PACK").shipment())).contains(statement, "P910;");
    }

    @Test
    void speak_the_orders_language_on_the_packing_list() {
        assertThat(text(shipment("bl-1011", By.ROAD, "DE")))
                .contains("Packliste", "Brutto 66,2 kg", "Batterie, Heck", "Heckraum, Antriebseinheit");
        assertThat(text(shipment("bl-1012", By.ROAD, "FR"))).contains("Liste de colisage");
    }

    @Test
    void list_the_pieces_that_are_not_decided_and_are_silent_where_there_are_none() {
        Shipment open = shipment("bl-1012", By.ROAD, "FR");
        assertThat(open.onHold()).isNotEmpty();
        Table held = papers(open)
                .get(0)
                .page("Liste de colisage")
                .tables()
                .filter(table -> table.name().equals("undecided"))
                .findFirst()
                .orElseThrow();
        assertThat(held.rows()).hasSameSizeAs(open.onHold());
        assertThat(words(shipment("bl-1011", By.ROAD, "DE"))).doesNotContain("Noch nicht verpackt");
    }

    @Test
    void write_the_customers_pages_in_the_orders_language_and_no_others() {
        Report papers = sheet(shipment("bl-1012", By.ROAD, "FR"));
        Report packing = papers(shipment("bl-1012", By.ROAD, "FR")).get(0);
        assertThat(papers.page("Labels 1").languageIn(papers)).isEqualTo("fr");
        assertThat(packing.page("Liste de colisage").languageIn(packing)).isEqualTo("fr");
        assertThat(packing.page("Liste de colisage").print().count().between()).isEqualTo(" sur ");
        assertThat(papers.page("Crates").languageIn(papers)).isEqualTo("en");
        assertThat(html(packing)).containsPattern("<dt>Masse nette</dt><dd>[0-9]+,[0-9] kg</dd>");
        assertThat(html(papers)).containsPattern("<dt>Net</dt><dd>[0-9]+\\.[0-9] kg</dd>");
    }

    @Test
    void ask_the_packer_what_guards_each_batterys_terminals() {
        Shipment shipment = shipment("bl-1011", By.ROAD, "DE");
        Table terminals = sheet(shipment)
                .page("Dangerous goods")
                .tables()
                .filter(table -> table.name().equals("terminals"))
                .findFirst()
                .orElseThrow();
        assertThat(terminals.rows()).hasSameSizeAs(shipment.dangerous());
        assertThat(words(shipment)).contains("Terminals guarded against short circuit, to be confirmed by the packer");
    }

    @Test
    void take_no_customs_papers_for_required_where_nobody_has_said_where_it_goes() {
        assertThat(words(new ShippedKit().part("A", "5", 1).to().shipment()))
                .contains("Customs papers: open, since the destination is not given");
        assertThat(words(shipment("bl-1011", By.ROAD)))
                .as("to where the consignee is")
                .contains("Customs papers: none, since IE and DE belong to one customs union.");
        assertThat(words(shipment("bl-1011", By.ROAD, "DE")))
                .contains("Customs papers: none, since IE and DE belong to one customs union.")
                .doesNotContain("Customs papers: open")
                .doesNotContain("Pro-forma");
        assertThat(words(shipment("bl-1011", By.ROAD, "IE")))
                .contains("Customs papers: none, since the crates stay in IE.")
                .doesNotContain("Pro-forma");
        assertThat(words(shipment("bl-1011", By.ROAD, "GB", "FR")))
                .as("through another country outside the union")
                .contains("Customs papers: required", "Proformarechnung");
        assertThat(words(shipment("bl-1011", By.SEA, "US"))).contains("Customs papers: required");
    }

    private static String html(Report report) {
        return new String(new HtmlWriter().write(report).get(0).content(), StandardCharsets.UTF_8);
    }

    @Nested
    @DisplayName("hold no cost of the workshop")
    class NoCost {

        private String written(String order) {
            StringBuilder all = new StringBuilder();
            Shipment abroad = shipment(order, By.ROAD, "GB");
            Stream.concat(Stream.of(sheet(abroad)), papers(abroad).stream())
                    .flatMap(report -> new JsonWriter().write(report).stream())
                    .forEach(file -> all.append(new String(file.content(), StandardCharsets.UTF_8)));
            return all.toString();
        }

        /** Sums of cost that are large enough not to stand there by chance. */
        private Set<String> costs(String order) {
            CostedBill costed = priced(order);
            Set<String> costs = new TreeSet<>();
            costs.add(shown(Costs.kit(costed.bill())));
            costs.add(shown(costed.totals().cost()));
            costed.rows().stream()
                    .map(row -> row.total())
                    .filter(total -> total.compareTo(BigDecimal.valueOf(150)) > 0)
                    .map(this::shown)
                    .forEach(costs::add);
            return costs;
        }

        private String shown(BigDecimal amount) {
            return ": " + amount.setScale(2, RoundingMode.HALF_UP).toPlainString();
        }

        @ParameterizedTest
        @ValueSource(strings = {"bl-1001", "bl-1010", "bl-2001"})
        void neither_of_a_part_nor_of_the_kit(String order) {
            String papers = written(order);
            // Sums of the papers are many: one may meet a cost by chance. Costs that got in would all be there.
            assertThat(costs(order))
                    .hasSizeGreaterThan(10)
                    .filteredOn(papers::contains)
                    .hasSizeLessThan(2);
        }

        @Test
        void while_the_bill_does_hold_them() {
            StringBuilder bill = new StringBuilder();
            CostedBill costed = priced("bl-1001");
            PickingList list = PickingList.of(RESOLVER.plan("pannier-van"), costed.bill());
            new JsonWriter()
                    .write(BillReport.compose(
                            OrderPricing.of(
                                    costed.bill(), costed.catalogue(), new QuoteRequest(LocalDate.EPOCH, null, null)),
                            list,
                            List.of()))
                    .forEach(file -> bill.append(new String(file.content(), StandardCharsets.UTF_8)));
            assertThat(costs("bl-1001"))
                    .anySatisfy(cost -> assertThat(bill.toString()).contains(cost));
        }
    }
}
