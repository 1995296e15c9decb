package boltlore.trades.shipping;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.demo.Demo;
import boltlore.faults.Outcome;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.text.TextWriter;
import boltlore.trades.KitInWork;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rules' own words for the particulars of ADR 5.4.1.1.1, in German and French from memory. */
@DisplayName("The transport document of an order in another language")
class TransportLanguagesTest {

    private static Report document(String order) {
        KitInWork kit = Demo.kit(order);
        Outcome<List<TradeResult>> worked = new ShippingTrade().work(List.of(kit), Given.NONE);
        return ((Outcome.Sound<List<TradeResult>>) worked)
                .value().stream()
                        .flatMap(result -> result.sheets().stream())
                        .filter(sheet -> sheet.folder().equals(TradeResult.FOR_CUSTOMERS))
                        .map(sheet -> sheet.report().get())
                        .filter(report -> report.file().equals("dangerous-goods"))
                        .findFirst()
                        .orElseThrow();
    }

    private static String text(Report report) {
        return new TextWriter(200).text(report).replaceAll("[\\s|\u00A0]+", " ");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ':',
            value = {
                "bl-1011 : Beförderungspapier für gefährliche Güter",
                "bl-1011 : UN-Nummer, der die Buchstaben „UN“",
                "bl-1011 : Offizielle Benennung für die Beförderung LITHIUM-IONEN-BATTERIEN",
                "bl-1011 : UN 3480 LITHIUM-IONEN-BATTERIEN, 9, (E)",
                "bl-1011 : Anzahl und Beschreibung der Versandstücke",
                "bl-1011 : Sperrholzkiste auf Kufen, für Gefahrgut zugelassen",
                "bl-1011 : Gesamtmenge",
                "bl-1011 : Name und Anschrift des Absenders",
                "bl-1011 : Name und Anschrift des Empfängers",
                "bl-1011 : Beförderungskategorie 2",
                "bl-1011 : Tunnelbeschränkungscode (E)",
                "bl-1012 : Document de transport pour marchandises dangereuses",
                "bl-1012 : Désignation officielle de transport PILES AU LITHIUM IONIQUE",
                "bl-1012 : Nombre et description des colis",
                "bl-1012 : Quantité totale",
                "bl-1012 : Nom et adresse de l'expéditeur",
                "bl-1012 : Nom et adresse du (des) destinataire(s)",
                "bl-1012 : Catégorie de transport 2",
                "bl-1012 : Code de restriction en tunnels (E)",
            })
    void says_the_particulars_as_the_rules_name_them_there(String order, String says) {
        assertThat(text(document(order))).contains(says);
    }

    @Test
    void says_them_in_english_too_which_every_country_takes() {
        Report german = document("bl-1011");
        assertThat(german.language()).isEqualTo("de");
        assertThat(german.pages()).extracting(Page::language).containsExactly("", "en");
        assertThat(text(german)).contains("UN 3480 LITHIUM ION BATTERIES, 9, (E)", "Name and address of the consignor");
    }

    @Test
    void stands_once_where_the_order_is_in_english() {
        Report english = document("bl-1001");
        assertThat(english.pages()).hasSize(1);
        assertThat(text(english))
                .contains("Number and description of the packages")
                .doesNotContain("Versandstücke");
    }
}
