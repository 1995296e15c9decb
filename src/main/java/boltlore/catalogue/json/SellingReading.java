package boltlore.catalogue.json;

import boltlore.catalogue.ExchangeRate;
import boltlore.catalogue.PartnerTerms;
import boltlore.catalogue.PriceStep;
import boltlore.catalogue.Profit;
import boltlore.catalogue.SalesTax;
import boltlore.catalogue.SellingTerms;
import boltlore.json.Allowed;
import boltlore.json.CurrencyReading;
import boltlore.json.ObjectReader;
import boltlore.json.PartyReading;
import boltlore.json.Range;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How a price is made of a cost, and what is agreed and due besides. */
final class SellingReading {

    private static final Range MARK_UP = Range.between(0, 1000);

    /** A margin of 100 % would ask for an endless price. */
    private static final Range MARGIN = Range.between(0, 95);

    private static final Range DISCOUNT = Range.between(0, 95);
    private static final Range TAX = Range.between(0, 100);
    private static final Allowed<PriceStep.Way> WAY = Allowed.of(PriceStep.Way.values());

    private final Reading reading;

    SellingReading(Reading reading) {
        this.reading = reading;
    }

    static Profit profit(ObjectReader reader) {
        BigDecimal markUp = reader.findDecimal("markUpPercent", MARK_UP);
        BigDecimal margin = reader.findDecimal("marginPercent", MARGIN);
        reader.oneWay("markUpPercent", "marginPercent");
        return margin == null ? Profit.markUp(markUp == null ? BigDecimal.ONE : markUp) : Profit.margin(margin);
    }

    static PriceStep step(ObjectReader reader) {
        return new PriceStep(reader.decimal("to", Range.POSITIVE), reader.oneOf("way", WAY));
    }

    PartnerTerms partner(ObjectReader reader) {
        String partner = reading.namedOnce(reader, "partner", Kind.PARTNER_WITH_TERMS, Kind.PARTNER);
        BigDecimal discount = reader.findDecimal("discountPercent", DISCOUNT);
        PartnerTerms terms = new PartnerTerms(
                partner,
                reader.findObject("price", SellingReading::profit).orElse(null),
                discount == null ? BigDecimal.ZERO : discount,
                CurrencyReading.find(reader, "currency"),
                reader.findObject("tax", this::tax).orElse(null),
                reader.findObject("delivery", PartyReading::delivery).orElse(null));
        return reading.sources().put(terms, reader.spot("currency"));
    }

    SellingTerms terms(ObjectReader reader) {
        List<SellingTerms.GoodsValue> values = reader.findObjects("customsValues", SellingReading::value);
        for (int i = 1; i < values.size(); i++) {
            String hs = values.get(i).hs();
            if (values.subList(0, i).stream().anyMatch(other -> other.hs().equals(hs))) {
                reader.faultAt("customsValues", "'" + hs + "' a second time", "each class once", "Remove one of them.");
            }
        }
        return new SellingTerms(
                reading.findWording(reader, "payment").orElse(null),
                reader.findObject("delivery", PartyReading::delivery).orElse(null),
                values);
    }

    private static SellingTerms.GoodsValue value(ObjectReader reader) {
        return new SellingTerms.GoodsValue(
                reader.text("hs", Shapes.HS_BEGINNING), reader.decimal("perKg", Range.POSITIVE));
    }

    Map<String, SalesTax> taxes(ObjectReader reader) {
        Map<String, SalesTax> taxes = new LinkedHashMap<>();
        reader.findObjects(
                "taxes",
                each -> taxes.put(reading.namedOnce(each, "market", Kind.TAXED_MARKET, Kind.MARKET), tax(each)));
        return Collections.unmodifiableMap(taxes);
    }

    private SalesTax tax(ObjectReader reader) {
        return new SalesTax(
                reading.wording(reader, "says"), reader.decimal("percent", TAX), reading.wording(reader, "because"));
    }

    List<ExchangeRate> rates(ObjectReader reader) {
        return reader.findObjects("rates", this::rate);
    }

    private ExchangeRate rate(ObjectReader reader) {
        ExchangeRate rate = new ExchangeRate(
                CurrencyReading.read(reader, "currency"),
                reader.decimal("rate", Range.POSITIVE),
                reader.date("date"),
                reader.whole("validDays", 0, 366));
        return reading.sources().put(rate, reader.spot());
    }
}
