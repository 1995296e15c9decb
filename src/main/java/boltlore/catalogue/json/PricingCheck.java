package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Customs;
import boltlore.catalogue.Duty;
import boltlore.catalogue.ExchangeRate;
import boltlore.catalogue.Operation;
import boltlore.catalogue.OperationRate;
import boltlore.catalogue.Part;
import boltlore.catalogue.PartnerTerms;
import boltlore.catalogue.PriceBook;
import boltlore.catalogue.Source;
import boltlore.faults.Nearest;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Rates, costs and duties against the parts, operations and partners that they are of. */
final class PricingCheck {

    private final Catalogue catalogue;
    private final PriceBook prices;
    private final Reading reading;

    private PricingCheck(Catalogue catalogue, PriceBook prices, Reading reading) {
        this.catalogue = catalogue;
        this.prices = prices;
        this.reading = reading;
    }

    static void check(Catalogue catalogue, Reading reading) {
        PriceBook prices = catalogue.prices();
        if (prices != null) {
            PricingCheck check = new PricingCheck(catalogue, prices, reading);
            check.operations();
            check.rates();
            check.duties();
            check.partners();
            catalogue.parts().values().forEach(check::part);
        }
    }

    private void operations() {
        Set<String> known = catalogue.parts().values().stream()
                .flatMap(part -> part.making().operations().stream())
                .map(Operation::operation)
                .collect(Collectors.toCollection(TreeSet::new));
        for (OperationRate rate : prices.labour().operations().values()) {
            if (!known.contains(rate.operation())) {
                String advice = Nearest.advice(rate.operation(), known, "No part is made with it.");
                fault(rate, "'" + rate.operation() + "'", "an operation of some part", advice);
            }
        }
    }

    private void rates() {
        Set<String> seen = new HashSet<>();
        for (ExchangeRate rate : prices.rates()) {
            String code = rate.currency().getCurrencyCode();
            if (rate.currency().equals(catalogue.workshop().currency())) {
                fault(rate, "a rate of " + code, "another currency than the workshop's own", "Remove it.");
            } else if (!seen.add(code + rate.date())) {
                String found = "a second rate of " + code + " from " + rate.date();
                fault(rate, found, "one rate of a currency from one day", "Remove one of the two.");
            }
        }
    }

    private void duties() {
        Set<String> seen = new HashSet<>();
        for (Duty duty : prices.landing().duties()) {
            String origin = duty.origin().isEmpty() ? "any origin" : duty.origin();
            if (!seen.add(duty.digits() + origin)) {
                String found = "a second duty on " + duty.hs() + " of " + origin;
                fault(duty, found, "one duty on a heading and origin", "Remove one of the two.");
            }
        }
    }

    /** A partner is quoted in a currency of which some rate is known. */
    private void partners() {
        Set<Currency> known =
                prices.rates().stream().map(ExchangeRate::currency).collect(Collectors.toSet());
        known.add(catalogue.workshop().currency());
        for (PartnerTerms terms : prices.partners().values()) {
            if (terms.currency() != null && !known.contains(terms.currency())) {
                String found = "partner '" + terms.partner() + "' quoted in " + terms.currency();
                fault(terms, found, "a currency with an exchange rate", "Add one under 'rates'.");
            }
        }
    }

    private void part(Part part) {
        if (part.source() == Source.MAKE) {
            made(part);
        } else if (part.customs() != null) {
            bought(part, part.customs());
        }
    }

    /** Half a minor unit either way may be rounding. */
    private void made(Part part) {
        BigDecimal material = prices.madeCost().material(part);
        int digits = Math.max(0, catalogue.workshop().currency().getDefaultFractionDigits());
        if (material.setScale(digits, RoundingMode.HALF_UP).signum() < 0) {
            String labour = prices.madeCost()
                    .labour(part)
                    .setScale(digits, RoundingMode.HALF_UP)
                    .toPlainString();
            fault(
                    part,
                    "a cost of " + part.cost().toPlainString() + ", in which labour alone is " + labour,
                    "a cost that holds labour, as 'madeCost' in pricing.json says, and material",
                    "Correct the cost, the operations' minutes, or 'madeCost'.");
        }
    }

    private void bought(Part part, Customs customs) {
        if (!prices.landing().isFree(customs) && prices.landing().duty(customs).isEmpty()) {
            fault(
                    part,
                    "HS " + customs.hs() + " from " + customs.origin() + ", of which no duty is known",
                    "a duty under 'landed' in pricing.json, or a duty-free origin",
                    "Add it; where no duty is due, write 0.");
        }
    }

    private void fault(Object record, String found, String expected, String advice) {
        reading.faults().add(reading.sources().of(record).fault(found, expected, advice));
    }
}
