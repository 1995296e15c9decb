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
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/** What was typed into the fields of a form, read by the same rules as texts of files; what cannot be read is told together. */
public final class Typed {

    private static final Pattern AMOUNT = Pattern.compile("[0-9]{1,9}([.,][0-9]{1,6})?");
    private static final Pattern BETWEEN = Pattern.compile("[,;\\s]+");

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
        return checked(label, call.said(field), shape);
    }

    /** Several texts of that look, from fields of one name; none at all is a fault. */
    public List<String> texts(String field, String label, TextShape shape) {
        List<String> said = call.all(field).stream()
                .filter(one -> !one.isEmpty())
                .distinct()
                .toList();
        if (said.isEmpty()) {
            fault(label, "nothing", "one at least. Go back, and tick it or type it in");
        }
        return said.stream().map(one -> checked(label, one, shape)).toList();
    }

    /** What stands in one field with blanks or commas between, each a line; none where it is empty. */
    public List<String> list(String field, String label) {
        return Arrays.stream(BETWEEN.split(call.said(field)))
                .filter(one -> !one.isEmpty())
                .map(one -> checked(label, one, TextShape.LINE))
                .toList();
    }

    /** A sentence or some, or none at all. */
    public String sentence(String field, String label) {
        String said = call.said(field);
        return said.isBlank() ? "" : read(label, said, Typed::sentence);
    }

    /** A sentence that must be there. */
    public String reason(String field, String label) {
        if (call.said(field).isBlank()) {
            fault(label, "nothing", "a sentence that says why");
        }
        return sentence(field, label);
    }

    /** A number with a point or a comma, above 0. */
    public BigDecimal amount(String field, String label) {
        BigDecimal amount = amountOrNone(field, label);
        if (amount.signum() == 0) {
            fault(label, call.said(field).isEmpty() ? "nothing" : "0", "a number above 0, such as 12 or 0.75");
        }
        return amount;
    }

    /** A number with a point or a comma; 0 where the field is empty. */
    public BigDecimal amountOrNone(String field, String label) {
        return call.said(field).isEmpty() ? BigDecimal.ZERO : number(label, call.said(field));
    }

    /** A number with a point or a comma; 0, and a fault, where it is none. */
    public BigDecimal number(String label, String said) {
        if (!AMOUNT.matcher(said).matches()) {
            fault(label, "'" + shown(said) + "'", "a number such as 12 or 0.75, with at most 6 decimals");
            return BigDecimal.ZERO;
        }
        return new BigDecimal(said.replace(',', '.'));
    }

    /** What else is wrong with the form. */
    public void fault(String label, String found, String expected) {
        faults.add(Fault.of(label, found, expected, ""));
    }

    /** Faulty with all that could not be read. */
    public Outcome<Typed> sound() {
        return faults.isEmpty() ? Outcome.sound(this) : Outcome.faulty(faults);
    }

    private String checked(String label, String said, TextShape shape) {
        return read(label, said, json -> {
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
    private String read(String label, String said, Function<Json, Outcome<String>> reading) {
        Outcome<String> outcome = JsonFile.parse(
                        label, JsonOut.text(said).written().getBytes(StandardCharsets.UTF_8))
                .then(reading);
        outcome.faults().forEach(each -> fault(label, each.found(), each.expected()));
        return outcome instanceof Outcome.Sound<String> sound ? sound.value() : "";
    }

    private static String shown(String said) {
        return said.length() <= 60 ? said : said.substring(0, 60) + "…";
    }
}
