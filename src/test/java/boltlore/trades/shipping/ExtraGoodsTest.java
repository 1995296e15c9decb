package boltlore.trades.shipping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.catalogue.ShippedBattery;
import boltlore.catalogue.Transport;
import boltlore.order.Extra;
import boltlore.order.ExtraGoods;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("An extra that is only described, as goods in carriage")
class ExtraGoodsTest {

    private static final ExtraGoods CELLS = cells("Folder 9", null);

    private static ExtraGoods cells(String testSummary, @Nullable String netKg) {
        return new ExtraGoods(
                new Transport("UN 3480", "9", new BigDecimal("30000")),
                netKg == null ? null : new BigDecimal(netKg),
                new ShippedBattery(ShippedBattery.NO_PART, true, false, testSummary, null));
    }

    private static Extra extra(String says, String kg, @Nullable ExtraGoods goods, boolean byCustomer) {
        return new Extra(
                null,
                says,
                BigDecimal.ONE,
                "each",
                BigDecimal.ONE,
                null,
                byCustomer,
                "Wanted.",
                "",
                new BigDecimal(kg),
                null,
                goods);
    }

    private static ShippedKit with(String says, @Nullable ExtraGoods goods) {
        return new ShippedKit().part("A", "5", 1).extra(extra(says, "20", goods, false));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Second traction pack, lithium-ion",
                "LFP cells, second string",
                "NMC pouch",
                "Set of 18650",
                "Traction modules, spare",
                "Ersatzzellen, 21700",
                "Zweiter Strang, LFP",
                "Cellules de rechange",
                "Modules de traction",
                "Starter battery",
                "Gas strut for the tailgate",
                "Touch-up paint, 100 ml",
                "Steering wheel with airbag",
                "Aerosol, contact cleaner",
                "Fuel tank",
                "Zweiter Batteriesatz",
                "Fahrakku",
                "Gasdruckfeder",
                "Autolack, weiß",
                "Kältemittel R1234yf",
                "Batterie de traction",
                "Vérin à gaz",
                "Peinture de retouche",
                "Airbag conducteur",
                "Superkondensator",
                "Notstromspeicher",
                "Nettoyant frein",
                "Supercapacitor module",
                "Brake cleaner",
                "Contact spray",
                "Battery tray with battery",
                "Batteriekabel mit Akku",
                "Câble de batterie et batterie",
                "Battery box, filled",
                "Cordless drill",
                "Kabellose Bohrmaschine",
                "Perceuse sans fil",
                "Coin cells for the remote",
                "Knopfzellen",
                "Pile bouton",
                "Hoverboard",
                "Elektroroller",
                "Trottinette électrique",
                "Démarreur de secours",
                "CO2 cartridges",
                "CO2-Patrone",
                "Cartouche de CO2",
                "Methylated spirit",
                "Spiritus",
                "Alcool à brûler",
                "Ether starting fluid",
                "White-spirit",
                "Testbenzin",
                "Lackstift",
                "Signalfackel",
                "Feu à main",
                "Airbag cover with airbag",
                "Pot de peinture noire",
                "Panneau et peinture",
                "Batteriekasten, gefüllt"
            })
    void stops_where_its_words_smell_of_dangerous_goods_and_nobody_says_what_it_is(String says) {
        assertThat(with(says, null).stops())
                .singleElement()
                .asString()
                .startsWith(says + ": 'goods' is missing in the order");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Gasket set",
                "Painted bracket",
                "Roof rack feet, aluminium, drilled",
                "Load floor, birch plywood 18 mm",
                "Gastraum-Trennwand",
                "Lackierter Halter",
                "Gazon synthétique",
                "Battened crate",
                "Load cell for the axle scale",
                "Cell spacers, PA12",
                "Wägezelle",
                "Zellenhalter, PA12",
                "Support de cellules",
                "Cellular rubber strip",
                "Gas pedal",
                "Gaspedal",
                "Pédale de gaz",
                "Battery cable, 50 mm²",
                "Battery label, three languages",
                "Battery tray",
                "Câble de batterie",
                "Batterieschild",
                "Lithiumfett",
                "Lithium grease, 400 g",
                "Graisse au lithium",
                "Lambda probe (oxygen sensor)",
                "Feuerlöscherhalter",
                "Ethernet cable",
                "Batteriekasten-Aufkleber",
                "Batteriekasten, leer",
                "Battery loom",
                "Faisceau de batterie",
                "Kältemittelschlauch",
                "Akkulaufzeitanzeige",
                "Câble des gaz",
                "Petrol cap",
                "Panneau peinture noire",
                "Airbag cover, bare",
                "Airbagabdeckung, lackiert",
                "Cache d'airbag, nu",
                "Bouchon d'essence"
            })
    void of_other_words_is_ordinary_goods(String says) {
        assertThat(with(says, null).stops()).isEmpty();
    }

    @Test
    void that_the_customer_supplies_does_not_travel_with_us() {
        Extra theirs = extra("Starter battery", "20", null, true);
        assertThat(new ShippedKit().part("A", "5", 1).extra(theirs).stops()).isEmpty();
    }

    @Test
    void said_to_be_none_is_looked_at_where_its_words_say_otherwise() {
        assertThat(with("Fuel tank", ExtraGoods.HARMLESS).stops()).isEmpty();
        assertThat(with("Fuel tank", ExtraGoods.HARMLESS).looks())
                .anySatisfy(says -> assertThat(says).startsWith("Fuel tank: the order says that it is no dangerous"));
        assertThat(with("Ladder", ExtraGoods.HARMLESS).looks())
                .noneSatisfy(says -> assertThat(says).contains("no dangerous goods"));
    }

    /** ADR 1.1.3.6.3: transport category 2 counts 3 for each kg, 630 for 210 kg (road table: bens-consulting.com). */
    @Test
    void counts_its_points_beside_the_kits_own() {
        Extra pack = extra("Second pack, lithium-ion", "78", CELLS, false);
        Shipment shipment =
                new ShippedKit().battery("PACK", "40", "9000").extra(pack).shipment();
        assertThat(RoadPoints.of(shipment.dangerous()).points())
                .isCloseTo(new BigDecimal("354"), within(BigDecimal.ZERO));
        assertThat(shipment.dangerous().get(0).wattHours()).isEqualByComparingTo("39000");
    }

    @Test
    void counts_the_mass_of_the_goods_alone_where_it_is_told() {
        Extra pack = extra("Second pack, lithium-ion", "78", cells("Folder", "70"), false);
        Shipment shipment = new ShippedKit().part("A", "5", 1).extra(pack).shipment();
        assertThat(RoadPoints.of(shipment.dangerous()).points()).isEqualByComparingTo("210");
    }

    @Test
    void lies_in_a_crate_for_dangerous_goods_and_stands_in_the_papers() {
        Extra pack = extra("Second pack, lithium-ion", "78", CELLS, false);
        Shipment shipment = new ShippedKit().part("A", "5", 1).extra(pack).shipment();
        assertThat(shipment.dangerous()).singleElement().satisfies(goods -> {
            assertThat(goods.un()).isEqualTo("UN 3480");
            assertThat(goods.crates().get(0).type().onlyDangerous()).isTrue();
        });
    }

    @Test
    void asks_for_its_test_summary_as_any_battery_does() {
        for (String nothing : List.of("", "-", "–", "n/a", "N. A.", "k. A.", "néant", "tbd")) {
            untested(nothing);
        }
        assertThat(new ShippedKit()
                        .part("A", "5", 1)
                        .extra(extra("Second pack, lithium-ion", "78", cells("Folder n/a-7", null), false))
                        .stops())
                .noneMatch(says -> says.contains("where its test summary"));
    }

    private static void untested(String summary) {
        Extra untested = extra("Second pack, lithium-ion", "78", cells(summary, null), false);
        assertThat(new ShippedKit().part("A", "5", 1).extra(untested).stops())
                .singleElement()
                .asString()
                .contains("its 'goods' in the order do not say where its test summary");
    }
}
