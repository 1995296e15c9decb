package boltlore.catalogue;

import boltlore.measure.Party;
import java.util.List;

/**
 * Who sends the crates, and sells what is in them.
 *
 * @param at address, country and numbers; it goes by the workshop's name
 * @param adviser dangerous-goods safety adviser, or empty where none is appointed
 */
public record Consignor(Party at, String adviser) {

    public static final Consignor UNKNOWN = new Consignor(Party.UNKNOWN, "");

    /** One of whom no numbers are known. */
    public Consignor(List<String> address, String country, String phone, String adviser) {
        this(new Party("", address, country, "", phone, "", "", ""), adviser);
    }

    /** Code (ISO 3166 alpha-2). */
    public String country() {
        return at.country();
    }

    /** At which somebody answers while goods are under way. */
    public String phone() {
        return at.phone();
    }
}
