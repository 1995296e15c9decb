package boltlore.trades.costing.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.demo.Demo;
import boltlore.report.Approved;
import boltlore.report.Cell;
import boltlore.report.Phrases;
import boltlore.report.Report;
import boltlore.report.Row;
import boltlore.report.Table;
import boltlore.report.text.TextWriter;
import boltlore.trades.weighing.AxleLoadsTrade;
import java.math.BigDecimal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Cost statement and quotation")
class PricingSheetsTest {

    private static final int WIDE = 200;

    private static QuotedDemo demo(String order) {
        return QuotedDemo.of(Demo.catalogue(), order);
    }

    /** In one line, without the rules of tables. */
    private static String words(Report report) {
        return new TextWriter(WIDE).text(report).replaceAll("[\\s|]+", " ");
    }

    private static String weight(String order, String country, String language) {
        return WeightStatement.say(
                AxleLoadsTrade.weighing(Demo.kit(order)),
                country,
                Phrases.of(QuotationSheet.class, QuotationSheet.FILE, language));
    }

    @Test
    void the_cost_statement_of_a_demo_order_reads_as_a_person_has_approved_it() {
        Approved.check(
                "trades/costing/sheets/bl-2001-cost-statement",
                new TextWriter(WIDE).text(demo("bl-2001").costStatement()));
    }

    @Test
    void the_quotation_of_a_demo_order_reads_as_a_person_has_approved_it() {
        Approved.check(
                "trades/costing/sheets/bl-1010-quotation",
                new TextWriter(WIDE).text(demo("bl-1010").quotation()));
    }

    @Test
    void a_quotation_is_in_the_orders_language() {
        assertThat(words(demo("bl-1011").quotation()))
                .contains("Angebot", "Was enthalten ist", "Bausatz wie beschrieben", "Heizung und Klimaanlage")
                .doesNotContain("Quotation", "What is included");
        assertThat(words(demo("bl-1012").quotation()))
                .contains("Devis", "Ce qui est compris")
                .doesNotContain("Quotation");
    }

    @Test
    void a_quotation_says_what_becomes_of_each_unused_bracket() {
        assertThat(words(demo("bl-1010").quotation()))
                .contains("Three-phase contactor bracket 1 ships with the kit")
                .contains("Compressor bracket 1 left out, not charged");
        assertThat(words(demo("bl-1001").quotation())).doesNotContain("Brackets that support nothing");
    }

    @Test
    void a_quotation_offers_what_was_not_chosen_and_could_be() {
        assertThat(words(demo("bl-1010").quotation())).contains("Could be added, not chosen");
        assertThat(words(demo("bl-1001").quotation())).doesNotContain("Could be added");
    }

    @Test
    void a_quotation_shows_tax_apart_and_says_whose_rate_it_is() {
        assertThat(words(demo("bl-1001").quotation())).contains("VAT, 23 %").contains("Standard rate of Ireland");
        assertThat(words(demo("bl-1004").quotation())).contains("VAT, 0 %").contains("Export from the European Union");
    }

    @Test
    void a_partners_discount_stands_on_no_paper_that_the_customer_reads() {
        Report quotation = demo("bl-1011").quotation();
        assertThat(words(quotation)).doesNotContain("Nachlass");
        Table price = quotation
                .tables()
                .filter(table -> table.name().equals("price"))
                .findFirst()
                .orElseThrow();
        BigDecimal lines = price.rows().stream()
                .filter(Row::isPlain)
                .map(row -> ((Cell.Figure) row.cells().get(price.column("amount"))).value())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        Cell.Worked net =
                (Cell.Worked) price.rows().get(price.row("net")).cells().get(price.column("amount"));
        assertThat(lines).isEqualByComparingTo(net.result());
    }

    @Test
    void a_customers_own_discount_is_shown() {
        assertThat(words(demo("bl-1005").quotation())).contains("Discount, ");
    }

    /** Directive 2006/112/EC, Articles 138 and 146, from memory. */
    @Test
    void a_quotation_without_tax_names_the_article_that_frees_it() {
        assertThat(words(demo("bl-1011").quotation()))
                .contains("Artikel 138 Absatz 1 der Richtlinie 2006/112/EG", "an DE000000000");
        assertThat(words(demo("bl-1012").quotation())).contains("article 138, paragraphe 1");
        assertThat(words(demo("bl-1004").quotation())).contains("Article 146(1) of Directive 2006/112/EC");
        assertThat(words(demo("bl-1001").quotation())).doesNotContain("2006/112");
    }

    @Test
    void a_quotation_says_rate_and_date_of_another_currency_and_until_when_it_holds() {
        assertThat(words(demo("bl-1010").quotation()))
                .contains(
                        "Prices are in AUD, at 1.68 AUD for 1 EUR, the rate of 15 June 2026. They are valid until 30 July 2026.");
        assertThat(words(demo("bl-1001").quotation()))
                .contains("The price is valid until 8 April 2026.")
                .doesNotContain("the rate of");
    }

    /** The order of 13 March 2020 is a French one: it binds nobody in Ireland or Germany. */
    @Test
    void a_quotation_quotes_a_weight_limit_only_in_the_country_whose_rule_it_is() {
        assertThat(weight("bl-1001", "FR", "en"))
                .contains("Your market allows at most 120 % of the mass before conversion")
                .contains("by calculation the vehicle is 22.4 kg above that and is to be weighed");
        assertThat(weight("bl-1011", "FR", "de"))
                .containsPattern("rechnerisch liegt das Fahrzeug [0-9]+,[0-9] kg darunter und ist zu wiegen");
        assertThat(weight("bl-1001", "FR", "fr"))
                .contains("Votre marché admet au plus 120 %")
                .contains("22,4 kg au-dessus et doit être pesé");
        assertThat(weight("bl-1001", "", "en")).doesNotContain("allows at most");
        assertThat(weight("bl-1013", "FR", "en")).doesNotContain("allows at most");
        assertThat(words(demo("bl-1001").quotation())).doesNotContain("allows at most");
        assertThat(words(demo("bl-1011").quotation())).doesNotContain("lässt höchstens");
    }

    @Test
    void a_number_of_the_union_or_of_great_britain_is_called_a_vat_number_and_another_a_tax_number() {
        assertThat(words(demo("bl-1001").quotation())).contains("VAT number").doesNotContain("Tax number");
        assertThat(words(demo("bl-1005").quotation())).contains("Your VAT number GB000000000");
        assertThat(words(demo("bl-1011").quotation())).contains("USt-IdNr.").doesNotContain("Steuernummer");
        assertThat(words(demo("bl-1012").quotation())).contains("N° de TVA").doesNotContain("Numéro fiscal");
    }

    @Test
    void a_quotation_counts_calendar_days_and_the_nearest_weeks() {
        assertThat(words(demo("bl-1011").quotation())).contains("51 Kalendertage (etwa 7 Wochen)");
        assertThat(words(demo("bl-1012").quotation())).contains("jours calendaires (environ");
    }

    @Test
    void a_quotation_writes_days_within_sentences_as_its_language_does() {
        assertThat(words(demo("bl-1012").quotation()))
                .contains("Le prix est valable jusqu'au 7 octobre 2026.")
                .doesNotContain("est valable jusqu'au 2026");
    }

    @Test
    void a_quotation_has_weight_charging_cautions_and_a_line_to_sign() {
        assertThat(words(demo("bl-1001").quotation()))
                .contains("By calculation the unladen vehicle weighs")
                .contains("The axles then carry")
                .contains("the vehicle charges with up to 11.0 kW: 3 phases, 230 V, 16 A.")
                .contains("which can kill")
                .contains("Accepted for the customer (name)");
    }

    @Test
    void the_cost_statement_says_what_the_costed_bill_shows_and_what_it_does_not() {
        Report report = demo("bl-1001").costStatement();
        assertThat(words(report)).contains("Direct cost, as on the costed bill").contains("for the workshop only");
    }

    @Test
    void the_cost_statement_says_why_shortening_one_part_alone_gains_nothing() {
        assertThat(words(demo("bl-2001").costStatement()))
                .contains("Half the duration of one part saves nothing: these have no slack either: ST-BX-SD-S,");
        assertThat(words(demo("bl-1001").costStatement())).contains("Half the duration of DU-90 would save 4 days.");
    }
}
