package boltlore.trades;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.measure.Party;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Directive 2006/112/EC, Articles 138, 146, 196 and 226 (11) and (11a), from memory. */
@DisplayName("Where no value added tax is charged, the paper says why")
class TaxFreeTest {

    private static Party party(String country, String taxNumber) {
        return new Party("Somebody", List.of("Street 1"), country, "", "", "", taxNumber, "");
    }

    private static Optional<TaxFree> from(String seller, String to, String buyersNumber) {
        return TaxFree.of(parties(seller, to, buyersNumber));
    }

    private static Parties parties(String seller, String to, String buyersNumber) {
        return new Parties(
                party(seller, seller + "0000000XX"), Optional.of(party(to, "")), Optional.of(party(to, buyersNumber)));
    }

    @ParameterizedTest(name = "from {0} to {1}, buyer {2}: {3}")
    @CsvSource({
        "IE, US, '', EXPORT",
        "IE, GB, GB000000000, EXPORT",
        "IE, CH, CHE000000000, EXPORT",
        "IE, DE, DE000000000, WITHIN_UNION",
        "IE, FR, FR00000000000, WITHIN_UNION",
        "IE, GB, XI000000000, WITHIN_UNION",
        "IE, DE, '', NUMBER_MISSING",
        "IE, DE, 12/345/67890, NUMBER_MISSING",
        "IE, DE, IE0000001XX, NUMBER_MISSING"
    })
    void by_where_the_goods_go_and_whose_number_the_buyer_has(
            String seller, String to, String number, TaxFree expected) {
        assertThat(from(seller, to, number)).contains(expected);
    }

    @ParameterizedTest(name = "from {0} to {1}")
    @CsvSource({"IE, IE, IE0000001XX", "GB, US, ''", "US, DE, DE000000000"})
    void says_nothing_at_home_or_of_a_seller_outside_the_union(String seller, String to, String number) {
        assertThat(from(seller, to, number)).isEmpty();
    }

    @Test
    void says_nothing_where_nobody_knows_where_the_goods_go() {
        Parties parties = new Parties(party("IE", "IE0000000XX"), Optional.empty(), Optional.empty());
        assertThat(TaxFree.of(parties)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "en; intra-Community supply (Article 138(1) of Directive 2006/112/EC) from IE0000000XX to DE000000000; reverse charge",
                "de; innergemeinschaftliche Lieferung (Artikel 138 Absatz 1 der Richtlinie 2006/112/EG) von IE0000000XX an DE000000000; Steuerschuldnerschaft des Leistungsempfängers",
                "fr; intracommunautaire exonérée de TVA (article 138, paragraphe 1, de la directive 2006/112/CE), de IE0000000XX à DE000000000; autoliquidation"
            })
    void names_the_article_and_both_numbers(String language, String supply, String mention) {
        assertThat(TaxFree.WITHIN_UNION.says(parties("IE", "DE", "DE000000000"), language))
                .contains(supply)
                .contains(mention);
    }

    @ParameterizedTest
    @CsvSource({"en, Article 146(1)", "de, Artikel 146 Absatz 1", "fr, 'article 146, paragraphe 1'"})
    void names_the_article_of_an_export(String language, String article) {
        assertThat(TaxFree.EXPORT.says(parties("IE", "US", ""), language)).contains(article);
    }
}
