package boltlore.measure;

import java.util.List;
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

    /** Somebody of whom nothing is known. */
    public static final Party UNKNOWN = new Party("", List.of(), "", "", "", "", "", "");

    public Party {
        address = List.copyOf(address);
    }

    /** One of whom only the address is known. */
    public Party(String name, List<String> address, String country) {
        this(name, address, country, "", "", "", "", "");
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
