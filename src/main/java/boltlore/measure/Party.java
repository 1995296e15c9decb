package boltlore.measure;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Somebody who sends, receives or pays, as papers name them.
 *
 * @param address in lines, without the name
 * @param country code (ISO 3166 alpha-2)
 * @param contact whom to ask for, or empty
 * @param phone or empty
 * @param email or empty
 * @param taxNumber number for value added tax or the like, with its country's letters, or empty
 * @param eori number by which the customs of the European Union know it, or empty
 */
public record Party(
        String name,
        List<String> address,
        String country,
        String contact,
        String phone,
        String email,
        String taxNumber,
        String eori) {

    /**
     * Members of the European Union, one customs territory and one of value added tax: Regulation (EU) No 952/2013, Article 4, and
     * Directive 2006/112/EC, Article 5, both from memory.
     */
    public static final Set<String> EUROPEAN_UNION = Set.of(
            "AT", "BE", "BG", "HR", "CY", "CZ", "DK", "EE", "FI", "FR", "DE", "GR", "HU", "IE", "IT", "LV", "LT", "LU",
            "MT", "NL", "PL", "PT", "RO", "SK", "SI", "ES", "SE");

    /** Great Britain, and the letters that numbers of Greece and of Northern Ireland begin with. */
    private static final Set<String> BESIDE = Set.of("GB", "EL", "XI");

    private static final int PREFIX = 2;

    /** Somebody of whom nothing is known. */
    public static final Party UNKNOWN = new Party("", List.of(), "", "", "", "", "", "");

    public Party {
        address = List.copyOf(address);
    }

    /** One of whom only the address is known. */
    public Party(String name, List<String> address, String country) {
        this(name, address, country, "", "", "", "", "");
    }

    /**
     * Whether the tax number is one for value added tax of the European Union or of Great Britain: it begins with the
     * letters of its country (Directive 2006/112/EC, Article 215, from memory); a number of the tax office alone does not.
     */
    public boolean hasVatNumber() {
        if (taxNumber.length() <= PREFIX) {
            return false;
        }
        String prefix = taxNumber.substring(0, PREFIX);
        return BESIDE.contains(prefix) || (!prefix.equals("GR") && EUROPEAN_UNION.contains(prefix));
    }

    public boolean isKnown() {
        return !address.isEmpty();
    }

    public Party called(String other) {
        return new Party(other, address, country, contact, phone, email, taxNumber, eori);
    }

    /** As it is written on a parcel: name, contact, address, country. */
    public List<String> lines() {
        return Stream.of(Stream.of(name, contact), address.stream(), Stream.of(country))
                .flatMap(line -> line)
                .filter(line -> !line.isEmpty())
                .toList();
    }

    /** The same in one line. */
    public String inLine() {
        return String.join(", ", lines());
    }
}
