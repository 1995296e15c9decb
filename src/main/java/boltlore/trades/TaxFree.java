package boltlore.trades;

import boltlore.measure.Party;
import boltlore.report.Phrases;
import java.util.Optional;

/**
 * Why no value added tax stands on a paper, in the sentence that the law asks for: Directive 2006/112/EC, Articles 138, 146,
 * 196 and 226 (11) and (11a), from memory.
 */
public enum TaxFree {
    /** Goods leave the European Union. */
    EXPORT,
    /** Goods go to a business in another member state, which has told its number. */
    WITHIN_UNION,
    /** Goods go to another member state, and nobody knows the buyer's number: tax is due. */
    NUMBER_MISSING;

    /** Member states know it so; goods that go there stay in the union's territory of goods (Windsor Framework, from memory). */
    private static final String NORTHERN_IRELAND = "XI";

    private static final int PREFIX = 2;

    /** Of a delivery on which no tax is charged; empty where it is domestic, where nobody sells from the union, or no address is known. */
    public static Optional<TaxFree> of(Parties parties) {
        Party seller = parties.seller();
        Party to = parties.consignee().orElse(Party.UNKNOWN);
        if (!Party.EUROPEAN_UNION.contains(seller.country()) || to.country().isEmpty()) {
            return Optional.empty();
        }
        String buyers = parties.buyer().map(TaxFree::state).orElse("");
        boolean staysIn = Party.EUROPEAN_UNION.contains(to.country())
                || (to.country().equals("GB") && buyers.equals(NORTHERN_IRELAND));
        if (!staysIn) {
            return Optional.of(EXPORT);
        }
        if (to.country().equals(seller.country())) {
            return Optional.empty();
        }
        boolean numbered = !buyers.isEmpty() && !buyers.equals("GB") && !buyers.equals(seller.country());
        return Optional.of(numbered ? WITHIN_UNION : NUMBER_MISSING);
    }

    /** The sentence, with both numbers where the law asks for them. */
    public String says(Parties parties, String language) {
        Phrases phrases = Phrases.of(TaxFree.class, "tax", language);
        return phrases.say(
                name(),
                parties.seller().taxNumber(),
                parties.buyer().map(Party::taxNumber).orElse(""));
    }

    /** That gave the number for value added tax; empty where there is none. */
    private static String state(Party party) {
        return party.hasVatNumber() ? party.taxNumber().substring(0, PREFIX) : "";
    }
}
