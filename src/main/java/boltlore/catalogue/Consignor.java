package boltlore.catalogue;

import java.util.List;

/**
 * Who sends the crates.
 *
 * @param address in lines
 * @param country code (ISO 3166 alpha-2)
 * @param phone at which somebody answers while goods are under way
 * @param adviser dangerous-goods safety adviser, or empty where none is appointed
 */
public record Consignor(List<String> address, String country, String phone, String adviser) {

    public static final Consignor UNKNOWN = new Consignor(List.of(), "", "", "");
}
