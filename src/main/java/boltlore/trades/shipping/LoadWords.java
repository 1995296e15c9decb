package boltlore.trades.shipping;

import boltlore.catalogue.Shipping;
import boltlore.catalogue.Workshop;
import boltlore.report.Phrases;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.stream.Collectors;

/** What is in a crate, in a few words of one language. */
record LoadWords(Workshop workshop, Shipping shipping, String language, Phrases phrases) {

    static LoadWords of(Shipment shipment, String language) {
        Phrases phrases = Phrases.of(ShippingReport.class, "packing", language);
        return new LoadWords(shipment.workshop(), shipment.shipping(), language, phrases);
    }

    /** 'Rear bay, Drive unit'; of dangerous goods with the UN number. */
    String of(Load load) {
        String own = load.bag().isEmpty() ? "" : bag(load.bag());
        String first = load.extras() ? phrases.say("extras") : stage(load.stage());
        String words = own.isEmpty() ? first : first + ", " + own;
        return load.dangerous() ? words + " (" + load.un() + ")" : words;
    }

    String bag(String code) {
        return shipping.bagSays(code, workshop, language);
    }

    /** '64,7 kg'. */
    String kg(BigDecimal kg) {
        return phrases.number(kg.setScale(1, RoundingMode.HALF_UP)) + " kg";
    }

    /** 'Rear bay, Front bay'. */
    String stages(Collection<String> names) {
        return names.stream().map(this::stage).collect(Collectors.joining(", "));
    }

    private String stage(String name) {
        return name.isEmpty() ? phrases.say("allStages") : workshop.stageSays(name, language);
    }
}
