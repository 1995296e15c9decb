package boltlore.choosing;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.choosing.Chooser.AllConflicts;
import boltlore.faults.Outcome;
import boltlore.logic.Count;
import boltlore.logic.Deadline;
import boltlore.logic.OrderCounter;
import boltlore.measure.OptionName;
import boltlore.measure.PartNumber;
import boltlore.resolution.rules.RuleResolver;
import java.math.BigInteger;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Textbook examples, written as catalogues of our own")
class TextbookTest {

    private static final Catalogue CATALOGUE = read();
    private static final Family SHIRT = CATALOGUE.family("shirt");
    private static final Family PHONE = CATALOGUE.family("phone");

    private static Catalogue read() {
        Outcome<Catalogue> outcome = CatalogueReader.read(Path.of("src/test/resources/textbook"));
        if (outcome instanceof Outcome.Sound<Catalogue> sound) {
            return sound.value();
        }
        throw new IllegalStateException(outcome.faults().toString());
    }

    private static Stream<CheckRow> rows(String... ids) {
        return CheckTable.rows("choosing-examples.csv", ids);
    }

    private static Stream<CheckRow> countsOfValues() {
        return rows(
                "TS-05", "TS-06", "TS-07", "TS-08", "TS-09", "TS-10", "TS-11", "TS-12", "TS-13", "PH-02", "PH-03",
                "PH-04", "PH-05", "PH-06", "PH-07", "PH-08");
    }

    @ParameterizedTest
    @MethodSource("countsOfValues")
    void so_many_orders_have_a_value(CheckRow row) {
        boolean shirt = row.text("id").startsWith("TS");
        String check = row.text("check");
        String value = check.substring(check.lastIndexOf(' ') + 1).toLowerCase(Locale.ROOT);
        Choice choice = named(shirt ? SHIRT : PHONE, value);

        assertThat(count(shirt ? SHIRT : PHONE, choice))
                .isEqualTo(row.number("expected").toBigInteger());
    }

    /** The choice of that value, or of 'yes' to the option of that name. */
    private static Choice named(Family family, String name) {
        return family.options().stream()
                .filter(option ->
                        option.name().text().equals(name) || option.valueNames().contains(name))
                .map(option -> new Choice(option.name(), option.valueNames().contains(name) ? name : "yes"))
                .findFirst()
                .orElseThrow();
    }

    private static BigInteger count(Family family, Choice... choices) {
        FamilyQuestions questions = new FamilyQuestions(CATALOGUE, new Chooser(family), Deadline.NONE);
        return ((Count.Exactly) questions.count(chosen(family, choices))).orders();
    }

    private static Choices chosen(Family family, Choice... choices) {
        Choices all = Choices.of(family, Map.of());
        for (Choice choice : choices) {
            all = all.with(choice.option(), choice.value());
        }
        return all;
    }

    @Test
    @DisplayName("TS-01, TS-02, PH-01: the number of orders without limits and with them")
    void the_number_of_orders() {
        Family unlimited = SmallFamilies.family(SHIRT.options(), List.of());

        assertThat(new OrderCounter(unlimited).all()).isEqualTo(exactly("TS-01"));
        assertThat(new OrderCounter(SHIRT).all()).isEqualTo(exactly("TS-02"));
        assertThat(new OrderCounter(PHONE).all()).isEqualTo(exactly("PH-01"));
    }

    private static Count exactly(String id) {
        return new Count.Exactly(
                rows(id).findFirst().orElseThrow().number("expected").toBigInteger());
    }

    @Test
    @DisplayName("TS-03, TS-04: what the choice of small forces and excludes")
    void what_a_choice_forces_and_excludes() {
        ChoiceState.Sound standing =
                (ChoiceState.Sound) new Chooser(SHIRT).standing(chosen(SHIRT, named(SHIRT, "small")));

        assertThat(forced(standing)).isEqualTo(expected("TS-03", "print = |colour = ", ";"));
        Set<String> closed = SHIRT.options().stream()
                .flatMap(option -> standing.closed(option).stream())
                .map(value -> value.value())
                .collect(Collectors.toSet());
        assertThat(closed).isEqualTo(expected("TS-04", "", ";"));
    }

    private static Set<String> forced(ChoiceState.Sound standing) {
        return standing.choices().family().options().stream()
                .flatMap(option -> standing.forced(option).stream())
                .map(value -> value.value())
                .collect(Collectors.toSet());
    }

    private static Set<String> expected(String id, String without, String between) {
        String written = rows(id).findFirst().orElseThrow().text("expected").replaceAll(without, "");
        return Arrays.stream(written.split(between))
                .map(each -> each.strip().toLowerCase(Locale.ROOT))
                .collect(Collectors.toSet());
    }

    @Test
    @DisplayName("TS-18, TS-19, PH-09: without a choice no value is impossible, and only calls are forced")
    void without_a_choice() {
        ChoiceState.Sound shirt = (ChoiceState.Sound) new Chooser(SHIRT).standing(chosen(SHIRT));
        ChoiceState.Sound phone = (ChoiceState.Sound) new Chooser(PHONE).standing(chosen(PHONE));

        assertThat(SHIRT.options()).allMatch(option -> shirt.closed(option).isEmpty());
        assertThat(forced(shirt)).isEmpty();
        assertThat(PHONE.options()).allMatch(option -> phone.closed(option).isEmpty());
        assertThat(phone.forced(PHONE.options().get(0))).isPresent();
    }

    private static Stream<CheckRow> contradictions() {
        return rows("TS-30", "TS-31", "TS-32");
    }

    @ParameterizedTest
    @MethodSource("contradictions")
    void requests_contradict_each_other_in_these_ways_and_are_mended_in_those(CheckRow row) {
        String given = row.text("given");
        List<Choice> requests = Arrays.stream(
                        given.substring(given.indexOf("order: ") + 7).split(","))
                .map(name -> named(SHIRT, name.strip().toLowerCase(Locale.ROOT)))
                .toList();
        Choices choices = chosen(SHIRT, requests.toArray(Choice[]::new));
        String[] expected = row.text("expected").split("\\|", -1);
        Chooser chooser = new Chooser(SHIRT);
        BestKits best = new BestKits(new RuleResolver(CATALOGUE), SHIRT, Deadline.NONE);

        AllConflicts conflicts = chooser.allConflicts(choices, List.of(), Importance.NONE);
        Opening mending = new Repairer(chooser, best).mending(choices, Importance.NONE);

        assertThat(conflicts.conflicts().stream().map(conflict -> names(conflict.choices())))
                .containsExactlyInAnyOrderElementsOf(sets(expected[0]));
        List<Repair> repairs = ((Opening.Repairs) mending).repairs();
        assertThat(repairs.stream().map(repair -> names(repair.givenUp())))
                .containsExactlyInAnyOrderElementsOf(sets(expected[1]));
        assertThat(repairs.get(0).givenUp()).hasSize(Integer.parseInt(expected[2].strip()));
    }

    private static Set<String> names(List<Choice> choices) {
        return choices.stream().map(Choice::value).collect(Collectors.toSet());
    }

    private static List<Set<String>> sets(String written) {
        return Arrays.stream(written.split(";"))
                .map(set -> Arrays.stream(set.replaceAll("[{} ]", "")
                                .toLowerCase(Locale.ROOT)
                                .split(","))
                        .collect(Collectors.toSet()))
                .toList();
    }

    @Test
    @DisplayName("TS-23, TS-29: which orders use a line's part, and their share")
    void the_share_of_a_part() {
        FamilyQuestions questions = new FamilyQuestions(CATALOGUE, new Chooser(SHIRT), Deadline.NONE);
        List<String> uses = new ArrayList<>();
        for (String part : List.of("FILM-A", "FILM-B", "FILM-C")) {
            FamilyQuestions.Bringing bringing = questions.bringing(new PartNumber(part), chosen(SHIRT));
            uses.add(((Count.Exactly) bringing.bringing()).orders().toString());
        }

        assertThat(String.join(", ", uses) + "; 0; 0")
                .isEqualTo(rows("TS-23").findFirst().orElseThrow().text("expected"));
        assertThat(uses.get(0) + " of " + count(SHIRT))
                .isEqualTo(rows("TS-29").findFirst().orElseThrow().text("expected"));
    }

    private static Stream<CheckRow> queens() {
        return rows("QU-04", "QU-05", "QU-06", "QU-07", "QU-08");
    }

    @ParameterizedTest
    @MethodSource("queens")
    void queens_that_do_not_attack_each_other(CheckRow row) {
        int size = Integer.parseInt(row.text("id").substring(3));
        List<Limit> limits = new ArrayList<>();
        for (int one = 0; one < size; one++) {
            for (int other = one + 1; other < size; other++) {
                for (int column = 0; column < size; column++) {
                    never(limits, size, one, column, other, column);
                    never(limits, size, one, column, other, column + other - one);
                    never(limits, size, one, column, other, column - other + one);
                }
            }
        }

        assertThat(new OrderCounter(SmallFamilies.family(rows(size), limits)).all())
                .isEqualTo(new Count.Exactly(row.number("expected").toBigInteger()));
    }

    private static Stream<CheckRow> series() {
        return rows("AI-04", "AI-05", "AI-06");
    }

    @ParameterizedTest
    @MethodSource("series")
    void series_whose_numbers_and_distances_all_differ(CheckRow row) {
        int size = Integer.parseInt(row.text("id").substring(3));
        List<Limit> limits = new ArrayList<>();
        for (int one = 0; one < size; one++) {
            for (int other = one + 1; other < size; other++) {
                for (int number = 0; number < size; number++) {
                    never(limits, size, one, number, other, number);
                }
            }
        }
        for (int one = 0; one + 1 < size; one++) {
            for (int other = one + 1; other + 1 < size; other++) {
                sameDistance(limits, size, one, other);
            }
        }

        assertThat(new OrderCounter(SmallFamilies.family(rows(size), limits)).all())
                .isEqualTo(new Count.Exactly(row.number("expected").toBigInteger()));
    }

    private static void sameDistance(List<Limit> limits, int size, int one, int other) {
        int[] steps = IntStream.range(0, size * size).toArray();
        for (int left : steps) {
            for (int right : steps) {
                int distance = Math.abs(left / size - left % size);
                if (distance > 0 && distance == Math.abs(right / size - right % size)) {
                    limits.add(limit(new Condition.All(List.of(
                            is(one, left / size),
                            is(one + 1, left % size),
                            is(other, right / size),
                            is(other + 1, right % size)))));
                }
            }
        }
    }

    private static List<Option> rows(int size) {
        return IntStream.range(0, size)
                .mapToObj(row -> SmallFamilies.option("r" + row, size))
                .toList();
    }

    private static void never(List<Limit> limits, int size, int one, int value, int other, int otherValue) {
        if (otherValue >= 0 && otherValue < size) {
            limits.add(limit(new Condition.All(List.of(is(one, value), is(other, otherValue)))));
        }
    }

    private static Limit limit(Condition forbidden) {
        return new Limit("l", "Because.", null, forbidden, null);
    }

    private static Condition is(int row, int value) {
        return new Condition.Is(new OptionName("r" + row), new TreeSet<>(Set.of("v" + value)));
    }
}
