package boltlore.bring;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Placeholder;
import boltlore.csv.CsvTable;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.TextShape;
import boltlore.measure.OptionName;
import boltlore.measure.PartNumber;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A part to begin with and how it is fitted.
 *
 * @param number of the part
 * @param name what it is called
 * @param orderCode its supplier's number
 * @param cost of one, in the workshop's currency, with a point
 * @param massKg of one, with a point
 * @param bin where it is picked; empty where it gets the next free one
 * @param quantity how many are fitted
 * @param when the values by option for which it is fitted; empty where it always is
 */
public record BegunPart(
        String number,
        String name,
        String orderCode,
        String cost,
        String massKg,
        String bin,
        String quantity,
        Map<String, List<String>> when) {

    private static final List<String> NEEDED = List.of("part", "name", "cost", "masskg", "ordercode");
    private static final String HEADINGS = "part, name, cost, massKg, orderCode; beside them quantity, bin and when";
    private static final String NUMBER = "\\d{1,9}(\\.\\d{1,9})?";

    /**
     * A part of which nothing but its number is known: all else is a placeholder.
     *
     * @param number of the part
     * @return what can be read and is told by each check until it is filled in
     */
    public static BegunPart named(String number) {
        return new BegunPart(
                number,
                Placeholder.TEXT + " " + number,
                Placeholder.TEXT,
                Placeholder.COST.toPlainString(),
                Placeholder.MASS_KG.toPlainString(),
                "",
                "1",
                Map.of());
    }

    /**
     * Parts as a table has them, a row each, under headings that are the keys of the catalogue's files. An order code, cost
     * or mass that is left empty is a placeholder, which each check tells.
     *
     * @param file for faults
     * @param bytes of a CSV text
     * @param known what is in the catalogue already
     * @param family whose options the column 'when' names, as in 'body=early side=left'; several values of one option are
     *     alternatives
     * @return the parts, or all that is wrong with the table
     */
    public static Outcome<List<BegunPart>> read(String file, byte[] bytes, Catalogue known, Family family) {
        return CsvTable.read(file, bytes, "a table with the headings " + HEADINGS)
                .then(table -> {
                    if (!table.has(NEEDED)) {
                        return Outcome.faulty(table.otherHeadings(HEADINGS));
                    }
                    List<Fault> faults = new ArrayList<>(table.overflows());
                    Set<String> numbers = known.parts().keySet().stream()
                            .map(PartNumber::toString)
                            .collect(Collectors.toCollection(HashSet::new));
                    List<BegunPart> parts = new ArrayList<>();
                    table.rows().forEach(row -> parts.add(new Row(table, row, faults).part(numbers, family)));
                    return faults.isEmpty() ? Outcome.sound(List.copyOf(parts)) : Outcome.faulty(faults);
                });
    }

    /** One row while it is read. */
    private record Row(CsvTable table, CsvTable.Row row, List<Fault> faults) {

        private BegunPart part(Set<String> numbers, Family family) {
            String number = table.cell(row, "part");
            if (!TextShape.PART_NUMBER.fits().test(number)) {
                fault("part", number, TextShape.PART_NUMBER.says());
            } else if (!numbers.add(number)) {
                faults.add(table.fault(row, "part", "part '" + number + "' again", "a number that no part has"));
            }
            return new BegunPart(
                    number,
                    text("name"),
                    table.cell(row, "ordercode").isEmpty() ? Placeholder.TEXT : text("ordercode"),
                    number("cost", Placeholder.COST.toPlainString()),
                    number("masskg", Placeholder.MASS_KG.toPlainString()),
                    table.cell(row, "bin"),
                    number("quantity", "1"),
                    when(family));
        }

        private String text(String heading) {
            String text = table.cell(row, heading);
            if (!TextShape.LINE.fits().test(text)) {
                fault(heading, text, TextShape.LINE.says());
            }
            return text;
        }

        private String number(String heading, String empty) {
            String cell = table.cell(row, heading);
            String text = cell.isEmpty() ? empty : table.decimalComma() ? cell.replace(',', '.') : cell;
            if (!text.matches(NUMBER)) {
                fault(heading, cell, "a plain number, such as 2.5");
            }
            return text;
        }

        private Map<String, List<String>> when(Family family) {
            Map<String, List<String>> when = new LinkedHashMap<>();
            for (String condition : table.cell(row, "when").split("\\s+", -1)) {
                String[] sides = condition.split("=", 2);
                if (sides.length == 2 && isOffered(family, sides[0], sides[1])) {
                    when.computeIfAbsent(sides[0], option -> new ArrayList<>()).add(sides[1]);
                } else if (!condition.isEmpty()) {
                    fault("when", condition, "option=value of the family: " + offered(family));
                }
            }
            return when;
        }

        private static boolean isOffered(Family family, String option, String value) {
            return TextShape.NAME.fits().test(option)
                    && family.option(new OptionName(option))
                            .flatMap(known -> known.value(value))
                            .isPresent();
        }

        private static String offered(Family family) {
            return family.options().stream()
                    .map(option -> option.name() + "="
                            + option.values().stream().map(OptionValue::value).collect(Collectors.joining("|")))
                    .collect(Collectors.joining(", "));
        }

        private void fault(String heading, String found, String expected) {
            faults.add(table.fault(row, heading, found.isEmpty() ? "an empty cell" : "'" + found + "'", expected));
        }
    }
}
