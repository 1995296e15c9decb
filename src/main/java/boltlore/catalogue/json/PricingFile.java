package boltlore.catalogue.json;

import boltlore.catalogue.KitWork;
import boltlore.catalogue.PartnerTerms;
import boltlore.catalogue.PriceBook;
import boltlore.json.ObjectReader;
import boltlore.measure.Wording;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** pricing.json: what work, overhead and delivery cost, and how a price and a quotation are made of it. */
final class PricingFile {

    private final Reading reading;
    private final MakingCostReading making;
    private final LandingReading landing;
    private final SellingReading selling;

    PricingFile(Reading reading) {
        this.reading = reading;
        this.making = new MakingCostReading(reading);
        this.landing = new LandingReading(reading);
        this.selling = new SellingReading(reading);
    }

    PriceBook read(ObjectReader reader) {
        return new PriceBook(
                reader.object("labour", making::labour),
                reader.object("madeCost", MakingCostReading::madeCost),
                reader.object("lots", making::lots),
                reader.object("overhead", MakingCostReading::overhead),
                reader.findObject("kitWork", making::kitWork).orElse(KitWork.NONE),
                reader.object("landed", landing::read),
                reader.object("price", SellingReading::profit),
                reader.object("rounding", SellingReading::step),
                Keyed.by(reader.findObjects("partners", selling::partner), PartnerTerms::partner),
                selling.taxes(reader),
                selling.rates(reader),
                reader.whole("validDays", 1, 366),
                excluded(reader),
                subSystems(reader),
                selling.terms(reader));
    }

    private List<Wording> excluded(ObjectReader reader) {
        return reader.findObjects("excluded", each -> reading.wording(each, "says"));
    }

    private Map<String, Wording> subSystems(ObjectReader reader) {
        Map<String, Wording> called = new LinkedHashMap<>();
        reader.findObjects(
                "subSystems",
                each -> called.put(
                        reading.namedOnce(each, "subSystem", Kind.SUB_SYSTEM_CALLED, Kind.SUB_SYSTEM),
                        reading.wording(each, "says")));
        return Collections.unmodifiableMap(called);
    }
}
