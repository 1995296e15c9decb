package boltlore.desk.frame;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.Faults;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import boltlore.json.TextShape;
import boltlore.json.Values;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * What was typed into the fields of a form, read by the same rules as texts of files; what cannot be read is told together,
 * each fault with its field, so that the page shows it there ({@link RefusedFields}).
 */
public final class Typed {

    /** Begins the file of a fault that belongs to a field of a form. */
    static final String FIELD = "field:";

    private static final Pattern AMOUNT = Pattern.compile("[0-9]{1,9}([.,][0-9]{1,6})?");
    private static final Pattern BETWEEN = Pattern.compile("[,;\\s]+");

    private static final Pattern COUNT = Pattern.compile("[0-9]{1,7}");

    private final Call call;
    private final List<Fault> faults = new ArrayList<>();

    public Typed(Call call) {
        this.call = call;
    }

    /** One line, or nothing. */
    public String line(String field, String label) {
        return call.said(field).isEmpty() ? "" : text(field, label, TextShape.LINE);
    }

    /** A text of that look, which must be there. */
    public String text(String field, String label, TextShape shape) {
        return checked(field, label, call.said(field), shape);
    }

    /** One line of several fields of a name, or nothing. */
    public String nth(String field, int at) {
        List<String> all = call.all(field);
        String said = at < 0 || at >= all.size() ? "" : all.get(at);
        return said.isEmpty() ? "" : checked(field, field, said, TextShape.LINE);
    }

    /** One text of several fields of a name, of that look. */
    public String said(String field, String label, String said, TextShape shape) {
        return checked(field, label, said, shape);
    }

    /** Several texts of that look, from fields of one name; none at all is a fault. */
    public List<String> texts(String field, String label, TextShape shape) {
        return texts(field, label, shape, false);
    }

    /**
     * The same, of fields that may say one thing several times.
     *
     * @param again whether they may
     */
    public List<String> texts(String field, String label, TextShape shape, boolean again) {
        List<String> filled =
                call.all(field).stream().filter(one -> !one.isEmpty()).toList();
        List<String> said = again ? filled : filled.stream().distinct().toList();
        if (said.isEmpty()) {
            fault(field, label, "nothing", "one at least. Go back, and tick it or type it in");
        }
        return said.stream().map(one -> checked(field, label, one, shape)).toList();
    }

    /** What stands in one field with blanks or commas between, each a line; none where it is empty. */
    public List<String> list(String field, String label) {
        return split(call.said(field)).stream()
                .map(one -> checked(field, label, one, TextShape.LINE))
                .toList();
    }

    /** The words of a text with blanks or commas between. */
    public static List<String> split(String said) {
        return Arrays.stream(BETWEEN.split(said)).filter(one -> !one.isEmpty()).toList();
    }

    /** A sentence or some, or none at all. */
    public String sentence(String field, String label) {
        String said = call.said(field);
        return said.isBlank() ? "" : read(field, label, said, Typed::sentence);
    }

    /** A sentence that must be there. */
    public String reason(String field, String label) {
        if (call.said(field).isBlank()) {
            fault(field, label, "nothing", "a sentence that says why");
        }
        return sentence(field, label);
    }

    /** A number with a point or a comma, above 0. */
    public BigDecimal amount(String field, String label) {
        BigDecimal amount = amountOrNone(field, label);
        if (amount.signum() == 0) {
            fault(field, label, call.said(field).isEmpty() ? "nothing" : "0", "a number above 0, such as 12 or 0.75");
        }
        return amount;
    }

    /** A number with a point or a comma; 0 where the field is empty. */
    public BigDecimal amountOrNone(String field, String label) {
        return call.said(field).isEmpty() ? BigDecimal.ZERO : number(field, label, call.said(field));
    }

    /** A number with a point or a comma; 0, and a fault, where it is none. */
    public BigDecimal number(String field, String label, String said) {
        if (!AMOUNT.matcher(said).matches()) {
            fault(field, label, "'" + shown(said) + "'", "a number such as 12 or 0.75, with at most 6 decimals");
            return BigDecimal.ZERO;
        }
        return new BigDecimal(said.replace(',', '.'));
    }

    /** A day as 2027-03-12 (ISO 8601); the one that is given, and a fault, where it is none. */
    public LocalDate day(String field, String label, LocalDate otherwise) {
        String said = call.said(field);
        try {
            return LocalDate.parse(said);
        } catch (DateTimeParseException none) {
            fault(field, label, said.isEmpty() ? "nothing" : "'" + shown(said) + "'", "a day such as 2027-03-12");
            return otherwise;
        }
    }

    /** A whole number from 0 to 9,999,999; 0, and a fault, where it is none. */
    public int count(String field, String label) {
        return natural(field, label, call.said(field));
    }

    /** The same of a text that stands elsewhere in the call. */
    public int natural(String field, String label, String said) {
        if (!COUNT.matcher(said).matches()) {
            fault(field, label, said.isEmpty() ? "nothing" : "'" + shown(said) + "'", "a whole number such as 3");
            return 0;
        }
        return Integer.parseInt(said);
    }

    /** What else is wrong with a field of the form. */
    public void fault(String field, String label, String found, String expected) {
        faults.add(at(field, Fault.of(label, found, expected, "")));
    }

    /** The same fault, shown at a field of the form. */
    public static Fault at(String field, Fault fault) {
        String place = String.join(" ", List.of(fault.file(), fault.place())).strip();
        return new Fault(FIELD + field, 0, place, fault.found(), fault.expected(), fault.advice());
    }

    /** Faulty with all that could not be read. */
    public Outcome<Typed> sound() {
        return faults.isEmpty() ? Outcome.sound(this) : Outcome.faulty(faults);
    }

    private String checked(String field, String label, String said, TextShape shape) {
        return read(field, label, said, json -> {
            Faults found = new Faults();
            Optional<String> text = Values.text(json, shape, found);
            return found.orElse(text.orElse(""));
        });
    }

    private static Outcome<String> sentence(Json json) {
        Faults found = new Faults();
        Optional<String> text = Values.text(json, found);
        return found.orElse(text.orElse(""));
    }

    /** As a JSON text each character is looked at, as those of files are. */
    private String read(String field, String label, String said, Function<Json, Outcome<String>> reading) {
        Outcome<String> outcome = JsonFile.parse(
                        label, JsonOut.text(said).written().getBytes(StandardCharsets.UTF_8))
                .then(reading);
        outcome.faults().forEach(each -> fault(field, label, each.found(), each.expected()));
        return outcome instanceof Outcome.Sound<String> sound ? sound.value() : "";
    }

    private static String shown(String said) {
        return said.length() <= 60 ? said : said.substring(0, 60) + "…";
    }
}
