package boltlore.trades.shipping;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.Bill;
import boltlore.bill.Masses;
import boltlore.catalogue.Catalogue;
import boltlore.demo.Demo;
import boltlore.order.Extra;
import boltlore.resolution.Resolver;
import boltlore.resolution.rules.RuleResolver;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.Pricing;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.QuoteRequest;
import boltlore.trades.picking.PickingList;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Demo orders in their crates")
class DemoShipmentsTest {

    private static final Resolver RESOLVER = new RuleResolver(Demo.catalogue());

    private static CostedBill priced(String order) {
        Catalogue catalogue = Demo.catalogue();
        return Pricing.cost(Demo.bill(order), catalogue);
    }

    private static PickingList list(Bill bill) {
        return PickingList.of(RESOLVER.plan(bill.order().family()), bill);
    }

    private static Shipment shipment(CostedBill costed) {
        return Shipper.ship(costed, price(costed), list(costed.bill()), new Route(By.ROAD, List.of("FR")));
    }

    private static SellingPrice price(CostedBill costed) {
        QuoteRequest asked =
                new QuoteRequest(Objects.requireNonNull(costed.bill().order().placed()), null, null);
        return SellingPrice.of(OrderPricing.of(costed.bill(), costed.catalogue(), asked))
                .orElseThrow();
    }

    private static void add(Map<String, BigDecimal> sums, String key, BigDecimal quantity) {
        sums.merge(key, quantity.stripTrailingZeros(), (a, b) -> a.add(b).stripTrailingZeros());
    }

    /** What stores hand out, counted without the trade's own code. */
    private static Map<String, BigDecimal> handedOut(Bill bill) {
        Map<String, BigDecimal> sums = new TreeMap<>();
        list(bill)
                .bags()
                .forEach(page -> page.rows().forEach(row -> {
                    add(sums, row.part().number() + row.finish(), row.quantity().add(row.spares()));
                }));
        bill.order().extra().stream()
                .filter(extra -> !extra.suppliedByCustomer())
                .forEach(extra -> add(sums, name(extra), extra.quantity()));
        return sums;
    }

    private static String name(Extra extra) {
        return extra.part() == null ? extra.says() : extra.part() + extra.finish();
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-1002", "bl-1010", "bl-2001", "bl-2002"})
    void every_part_and_every_extra_of_a_demo_order_is_in_exactly_one_crate(String order) {
        CostedBill costed = priced(order);
        Map<String, BigDecimal> packed = new TreeMap<>();
        shipment(costed).crates().stream()
                .flatMap(crate -> crate.packed().stream())
                .forEach(each -> add(packed, each.goods().name() + each.goods().finish(), each.quantity()));
        assertThat(packed).isEqualTo(handedOut(costed.bill()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-2001"})
    void masses_of_crates_add_up_to_the_kit_with_its_spares(String order) {
        CostedBill costed = priced(order);
        BigDecimal spares = list(costed.bill()).bags().stream()
                .flatMap(page -> page.rows().stream())
                .map(row -> Masses.eachKg(row.part(), Demo.catalogue()::part).multiply(row.spares()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        Shipment shipment = shipment(costed);
        assertThat(shipment.onHold()).isEmpty();
        assertThat(shipment.netKg())
                .isEqualByComparingTo(Masses.kitKg(costed.bill()).add(spares));
        assertThat(sum(shipment.customs().stream().map(CustomsLine::netKg))).isEqualByComparingTo(shipment.netKg());
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-1010", "bl-2001"})
    void values_of_customs_lines_add_up_to_the_price_to_the_cent(String order) {
        CostedBill costed = priced(order);
        List<CustomsLine> lines = shipment(costed).customs();
        assertThat(sum(lines.stream().map(CustomsLine::value)))
                .isEqualByComparingTo(price(costed).total());
        assertThat(lines).allSatisfy(line -> assertThat(line.value()).isGreaterThanOrEqualTo(BigDecimal.ZERO));
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-1010", "bl-2001"})
    void no_crate_of_a_demo_order_is_above_its_limit_and_nothing_stops(String order) {
        Shipment shipment = shipment(priced(order));
        assertThat(shipment.crates())
                .allSatisfy(crate -> assertThat(crate.grossKg())
                        .isLessThanOrEqualTo(crate.type().mostGrossKg()));
        assertThat(shipment.findings(new Consignment(List.of(shipment))).stops())
                .isFalse();
    }

    private static BigDecimal sum(Stream<BigDecimal> all) {
        return all.reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Acid, gas and short circuit of lead-acid batteries: common practice, no source. */
    @Test
    void lead_acid_batteries_warn_of_acid_gas_and_short_circuit_and_no_other_part_does() {
        assertThat(Demo.catalogue().parts().values()).allSatisfy(part -> {
            boolean lead = part.transport() != null
                    && UnNumber.of(part.transport().un())
                            .filter(UnNumber::leadAcid)
                            .isPresent();
            assertThat(part.cautions().contains("lead-acid"))
                    .as(part.number().text())
                    .isEqualTo(lead);
        });
        assertThat(Demo.kit("bl-1001")
                        .workshop()
                        .cautions()
                        .get("lead-acid")
                        .says()
                        .english())
                .contains("acid", "gas", "short circuit", "upright", "Eye protection");
    }
}
