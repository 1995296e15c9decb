package boltlore.demo;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Operation;
import boltlore.catalogue.Part;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The demo's figures were each thought of: none is another one times a factor. Shares and bounds are the workshop's own,
 * no source; each is tried on figures that were made by a rule.
 */
@DisplayName("The demo's data shows no pattern")
class DemoDataTest {

    private static final Collection<Part> PARTS = Demo.catalogue().parts().values();

    private static List<String> those(Collection<Part> parts, Predicate<Part> which) {
        return parts.stream().filter(which).map(part -> part.number().text()).toList();
    }

    private static double mostFrequent(Stream<?> values) {
        List<?> all = values.toList();
        Map<?, Long> counts = all.stream().collect(Collectors.groupingBy(each -> each, Collectors.counting()));
        return counts.values().stream().mapToLong(Long::longValue).max().orElseThrow() / (double) all.size();
    }

    /** Share of the pairs of like-named parts of both families that have the ratio which is the most frequent, to three digits. */
    private static double sameRatio(Map<String, BigDecimal> figures) {
        MathContext digits = new MathContext(3);
        return mostFrequent(figures.keySet().stream()
                .filter(number -> number.startsWith("ST-"))
                .filter(number -> figures.containsKey(twin(number)))
                .map(number -> figures.get(number).divide(figures.get(twin(number)), digits)));
    }

    private static String twin(String pickUp) {
        return "PV-" + pickUp.substring(3);
    }

    private static Map<String, BigDecimal> figures(Function<Part, BigDecimal> figure) {
        Map<String, BigDecimal> figures = new TreeMap<>();
        for (Part part : PARTS) {
            BigDecimal value = figure.apply(part);
            if (value != null && value.signum() > 0) {
                figures.put(part.number().text(), value);
            }
        }
        return figures;
    }

    /** The pick-up's figures made from the van's. */
    private static Map<String, BigDecimal> copied(Map<String, BigDecimal> figures, UnaryOperator<BigDecimal> rule) {
        Map<String, BigDecimal> copy = new TreeMap<>(figures);
        copy.replaceAll((number, own) -> number.startsWith("ST-") && figures.containsKey(twin(number))
                ? rule.apply(figures.get(twin(number)))
                : own);
        return copy;
    }

    private static BigDecimal minutes(Part part) {
        return part.making().operations().stream().map(Operation::runMin).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal area(Part part) {
        return part.coat() == null ? null : part.coat().areaM2();
    }

    static Stream<Function<Part, BigDecimal>> perPart() {
        return Stream.of(Part::cost, Part::massKg, DemoDataTest::area, DemoDataTest::minutes);
    }

    @ParameterizedTest(name = "{index} of cost, mass, coated area, minutes")
    @MethodSource("perPart")
    void no_figure_of_the_pick_up_is_the_vans_times_a_factor(Function<Part, BigDecimal> figure) {
        Map<String, BigDecimal> figures = figures(figure);

        assertThat(sameRatio(figures)).isLessThan(0.1);
        assertThat(sameRatio(copied(figures, van -> van.multiply(new BigDecimal("0.92")))))
                .isGreaterThan(0.9);
    }

    /** The figure of an order code without what is no digit; a code of letters alone has none. */
    private static List<Long> numbers(Stream<String> codes) {
        return codes.map(code -> code.replaceAll("\\D", ""))
                .filter(digits -> !digits.isEmpty())
                .map(Long::valueOf)
                .toList();
    }

    private static double crowded(List<Long> numbers, int modulus) {
        return mostFrequent(numbers.stream().map(number -> number % modulus));
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13})
    void order_codes_are_no_series(int modulus) {
        List<Long> numbers = numbers(
                PARTS.stream().map(Part::buying).filter(Objects::nonNull).map(buying -> buying.orderCode()));
        List<Long> series =
                IntStream.range(0, 390).mapToObj(each -> 1000L + 7L * each).toList();

        assertThat(numbers).hasSizeGreaterThan(400);
        assertThat(crowded(numbers, modulus)).isLessThan(1.0 / modulus + 0.1);
        assertThat(crowded(series, 7)).as("a near miss").isEqualTo(1);
    }

    @Test
    void each_supplier_codes_in_its_own_way() {
        Map<String, List<String>> codes = PARTS.stream()
                .map(Part::buying)
                .filter(Objects::nonNull)
                .collect(Collectors.groupingBy(
                        buying -> buying.supplier(),
                        Collectors.mapping(
                                buying -> buying.orderCode()
                                        .replaceAll("[A-Z]+", "A")
                                        .replaceAll("\\d+", "9"),
                                Collectors.toList())));

        assertThat(codes.values().stream().map(Set::copyOf).distinct())
                .as("patterns of letters and digits")
                .hasSizeGreaterThan(10);
    }

    @ParameterizedTest
    @ValueSource(strings = {"fit up and tack/weld", "dress and check/weld", "bend/deburr", "crimp/isolation test"})
    void no_operation_takes_a_share_of_another(String two) {
        String[] names = two.split("/", 2);
        List<Operation[]> both = PARTS.stream()
                .map(part -> part.making().operations())
                .map(all -> new Operation[] {of(all, names[0]), of(all, names[1])})
                .filter(pair -> pair[0] != null && pair[1] != null)
                .toList();
        MathContext digits = new MathContext(2);

        assertThat(both).hasSizeGreaterThan(40);
        assertThat(mostFrequent(both.stream().map(pair -> pair[0].runMin().divide(pair[1].runMin(), digits))))
                .isLessThan(0.2);
        assertThat(mostFrequent(both.stream()
                        .map(pair ->
                                pair[1].runMin().multiply(new BigDecimal("0.7")).divide(pair[1].runMin(), digits))))
                .as("a near miss")
                .isEqualTo(1);
    }

    private static Operation of(List<Operation> all, String name) {
        return all.stream()
                .filter(each -> each.operation().equals(name))
                .findFirst()
                .orElse(null);
    }

    /** Headings of the Harmonized System, chapters as the World Customs Organization publishes them (from memory). */
    private static final Map<String, String> SELLS = Map.ofEntries(
            Map.entry("Brennock Fixings", "7318|7326|3926|3506|3214|3403"),
            Map.entry("Corvane Fasteners", "7318"),
            Map.entry("Hollinmere Rubber", "4016"),
            Map.entry("Fenwright Looms", "8544|8536|8537|8512|3917|9032"),
            Map.entry("Tollismere Batteries", "8507"),
            Map.entry("Garrowick Hydraulics", "8413|4009"),
            Map.entry("Ellervane Climate", "8415|8537|8536|8414|3403|8481|9026|4009|7307|8516|8708"),
            Map.entry("Ardlow Hose and Pump", "4009|8413|8708|8414|3917|9025|8481|8419|7318|3820|7310|9026"),
            Map.entry("Marrowdene Hose", "4009"),
            Map.entry("Milvarrow Print", "4901|8310|3919|4911"),
            Map.entry("Tarnholt Drives", "8501|2710|9032|9031|8531|8708"),
            Map.entry("Pendrovar Shafts", "8483|8708"),
            Map.entry("Kessamere Cells", "8507|9032|9030|8419|3919|8481|8544|8547"),
            Map.entry("Voltharne Components", "8536|8537|8504|8544|9030|4016|3917|3926"),
            Map.entry("Osk Charging", "4202|8536|8504|8501|9025|8512|9032|8544|8302"));

    private static boolean sells(String supplier, String hs) {
        return Pattern.matches("(" + SELLS.get(supplier) + ").*", hs);
    }

    @Test
    void suppliers_sell_what_such_a_supplier_has() {
        assertThat(those(
                        PARTS,
                        part -> part.buying() != null
                                && !sells(
                                        part.buying().supplier(), part.customs().hs())))
                .isEmpty();
        assertThat(sells("Brennock Fixings", "8413.60")).as("a hydraulic pump").isFalse();
    }

    @Test
    void lead_times_differ_as_things_do() {
        Stream<Integer> days =
                PARTS.stream().filter(part -> part.buying() != null).map(Part::leadDays);

        assertThat(mostFrequent(days)).isLessThan(0.15);
        assertThat(mostFrequent(IntStream.range(0, 400).mapToObj(each -> each % 4 == 0 ? 14 : 24)))
                .as("a near miss")
                .isGreaterThan(0.5);
    }

    @ParameterizedTest
    @CsvSource({"bl-2001, ST-LAMP ST-RVA", "bl-2002, ''", "bl-2003, ST-O12"})
    void of_the_pick_ups_extras_a_kit_holds_those_that_its_order_names(String order, String extras) {
        assertThat(Demo.bill(order).items().stream()
                        .map(item -> item.part().number().text())
                        .filter(Set.of("ST-LAMP", "ST-RVA", "ST-O12")::contains)
                        .sorted()
                        .collect(Collectors.joining(" ")))
                .isEqualTo(extras);
    }

    @Test
    void every_part_says_where_its_figures_are_from() {
        assertThat(those(PARTS, part -> part.upkeep().notes().isEmpty())).isEmpty();
    }
}
