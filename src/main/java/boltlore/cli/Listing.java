package boltlore.cli;

import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.faults.Outcome;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;

/** How a list is sorted and which of its rows are told; the keys are those of the rows' JSON. */
final class Listing {

    @Option(
            names = "--sort",
            paramLabel = "KEY",
            split = ",",
            description = "Sort by these keys of the JSON, '-' before one turns it round: --sort due,-order.")
    private List<String> sort = new ArrayList<>();

    @Option(
            names = "--where",
            paramLabel = "KEY=TEXT",
            description =
                    "Only rows with that text in that key of the JSON; may be given several times, and then all hold.")
    private Map<String, String> where = Map.of();

    /** A row and what its JSON holds, key by key. */
    private record Row<R>(R row, Map<String, Json> members) {

        String text(String key) {
            Json value = members.get(key);
            if (value instanceof Json.Text text) {
                return text.text();
            }
            return value instanceof Json.Num number
                    ? number.number().toPlainString()
                    : value == null ? "" : JsonOut.of(value).writtenInLine();
        }
    }

    /** The rows that are asked for, as they are asked for; faulty where a row has no such key. */
    <R> Outcome<List<R>> of(List<R> rows, Function<? super R, ? extends JsonOut> asJson) {
        if (rows.isEmpty() || (sort.isEmpty() && where.isEmpty())) {
            return Outcome.sound(rows);
        }
        List<Row<R>> all = rows.stream()
                .map(row -> new Row<>(row, members(asJson.apply(row))))
                .toList();
        Set<String> keys = all.stream()
                .flatMap(row -> row.members().keySet().stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        List<Fault> faults = new ArrayList<>();
        sort.stream()
                .map(Listing::key)
                .filter(key -> !keys.contains(key))
                .forEach(key -> faults.add(unknown("--sort", key, keys)));
        where.keySet().stream()
                .filter(key -> !keys.contains(key))
                .forEach(key -> faults.add(unknown("--where", key, keys)));
        if (!faults.isEmpty()) {
            return Outcome.faulty(faults);
        }
        return Outcome.sound(all.stream()
                .filter(row -> where.entrySet().stream().allMatch(each -> holds(row, each.getKey(), each.getValue())))
                .sorted(order())
                .map(Row::row)
                .toList());
    }

    private static Fault unknown(String option, String key, Set<String> keys) {
        String asked = BookOption.shortened(key);
        return Fault.of(option, "'" + asked + "'", String.join(", ", keys), Nearest.advice(asked, keys, ""));
    }

    private static Map<String, Json> members(JsonOut row) {
        byte[] written = row.writtenInLine().getBytes(StandardCharsets.UTF_8);
        return JsonFile.parse("row", written) instanceof Outcome.Sound<Json> sound
                        && sound.value() instanceof Json.Obj object
                ? object.members()
                : Map.of();
    }

    private static <R> boolean holds(Row<R> row, String key, String text) {
        return row.text(key).toLowerCase(Locale.ROOT).contains(text.toLowerCase(Locale.ROOT));
    }

    private static String key(String asked) {
        return asked.startsWith("-") ? asked.substring(1) : asked;
    }

    private <R> Comparator<Row<R>> order() {
        Comparator<Row<R>> order = Comparator.comparing(row -> 0);
        for (String asked : sort) {
            order = order.thenComparing(by(asked));
        }
        return order;
    }

    private <R> Comparator<Row<R>> by(String asked) {
        Comparator<Row<R>> by = (one, other) -> compare(one.text(key(asked)), other.text(key(asked)));
        return asked.startsWith("-") ? by.reversed() : by;
    }

    /** Numbers by their value, before texts. */
    private static int compare(String one, String other) {
        boolean numbers = isNumber(one) && isNumber(other);
        return numbers ? new BigDecimal(one).compareTo(new BigDecimal(other)) : one.compareTo(other);
    }

    private static boolean isNumber(String text) {
        return text.matches("-?[0-9]{1,30}(\\.[0-9]{1,30})?");
    }
}
