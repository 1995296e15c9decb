package boltlore.json;

import boltlore.measure.DeliveryTerm;
import boltlore.measure.Party;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Who sends, receives and pays, and where goods pass from one to the other: read strictly, and written as it is read. */
public final class PartyReading {

    private static final List<String> COUNTRIES = Arrays.asList(Locale.getISOCountries());

    /** Assigned codes only: 'UK' is none, 'GB' is (ISO 3166-1 alpha-2). */
    private static final TextShape COUNTRY = new TextShape(
            COUNTRIES::contains,
            "the code of a country, of two capital letters (ISO 3166: IE, GB, FR …)",
            "^[A-Z]{2}$",
            2);

    private static final TextShape PHONE = shape(
            "a telephone number of digits, '+', '-', '(', ')' and blanks, as +353 20 915 0142",
            "^\\+?[0-9(][0-9 ()/-]{3,38}[0-9]$",
            40);

    private static final TextShape EMAIL =
            shape("an e-mail address, as stores@example.org", "^[^\\s@]+@[^\\s@]+\\.[^\\s@]+$", 100);

    private static final TextShape TAX_NUMBER = shape(
            "a tax number of capital letters, digits, '.', '/', '-' and blanks, as IE0000000XX",
            "^[A-Z0-9][A-Z0-9 ./-]{3,23}[A-Z0-9]$",
            25);

    /** Country and at most 15 characters (Regulation (EU) 2015/2446, annex on the format of EORI numbers; from memory). */
    private static final TextShape EORI = shape(
            "an EORI number: the country's two letters and at most 15 letters or digits",
            "^[A-Z]{2}[A-Za-z0-9]{1,15}$",
            17);

    private static final Allowed<DeliveryTerm.Rule> RULES = Allowed.of(DeliveryTerm.Rule.values(), Enum::name);

    private PartyReading() {}

    private static TextShape shape(String says, String pattern, int longest) {
        Pattern compiled = Pattern.compile(pattern);
        return new TextShape(
                text -> text.length() <= longest && compiled.matcher(text).matches(), says, pattern, longest);
    }

    /** A party with its name in the object; without one it is called as told. */
    public static Party read(ObjectReader reader, String otherwise) {
        String name = reader.findText("name", TextShape.LINE).orElse(otherwise);
        return nameless(reader).called(name);
    }

    /** A party whose name stands elsewhere. */
    public static Party nameless(ObjectReader reader) {
        return new Party(
                "",
                reader.texts("address", TextShape.LINE, (line, location) -> line),
                reader.text("country", COUNTRY),
                reader.findText("contact", TextShape.LINE).orElse(""),
                reader.findText("phone", PHONE).orElse(""),
                reader.findText("email", EMAIL).orElse(""),
                reader.findText("taxNumber", TAX_NUMBER).orElse(""),
                reader.findText("eori", EORI).orElse(""));
    }

    /** As {@link #read} reads it back. */
    public static JsonOut.Members written(Party party) {
        return JsonOut.object()
                .putIfAny("name", party.name())
                .putIfAny("address", party.address())
                .put("country", party.country())
                .putIfAny("contact", party.contact())
                .putIfAny("phone", party.phone())
                .putIfAny("email", party.email())
                .putIfAny("taxNumber", party.taxNumber())
                .putIfAny("eori", party.eori());
    }

    public static DeliveryTerm delivery(ObjectReader reader) {
        return new DeliveryTerm(reader.oneOf("rule", RULES), reader.text("place", TextShape.LINE));
    }

    public static JsonOut.Members written(DeliveryTerm term) {
        return JsonOut.object().put("rule", term.rule().name()).put("place", term.place());
    }
}
