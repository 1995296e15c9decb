package boltlore.trades.orders;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.demo.Demo;
import boltlore.faults.Outcome;
import boltlore.findings.Findings;
import boltlore.report.Report;
import boltlore.trades.KitInWork;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.bill.sheets.BillReport;
import boltlore.trades.buying.BuyingTrade;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.QuoteOptions;
import boltlore.trades.orders.SheetTexts.Text;
import boltlore.trades.picking.PickingTrade;
import boltlore.trades.scheduling.SchedulingTrade;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Against the English sheets of the same orders: what reads the same in both was not translated. */
@DisplayName("Sheets of a workshop that speaks another language")
class SpokenSheetsTest {

    /** Trades whose sheets speak the workshop's language; one that is not here stands in English yet. */
    private static final Set<String> DONE = Set.of(
            // one a line
            "axle-loads",
            "bill",
            "braking",
            "buy",
            "charging",
            "coat",
            "cooling",
            "cut",
            "driving",
            "fixings",
            "mounting",
            "picking",
            "price",
            "schedule",
            "ship",
            "spares",
            "test");

    private static final List<String> ORDERS = List.of("bl-1001", "bl-1004", "bl-1010", "bl-2001");
    private static final Pattern TEXT = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
    private static final Pattern ENGLISH = Pattern.compile("\"en\": \"((?:[^\"\\\\]|\\\\.)*)\", \"de\": \"([^\"]*)\"");
    private static final Pattern WORD = Pattern.compile("\\p{L}*\\p{Ll}{2}\\p{L}*");

    /** A whole number with its unit, or what programs call a box or a run by. */
    private static final Pattern WHOLE = Pattern.compile(
            "(?<![\\d.])\\d+ (mm|kg|kW|kWh|min|Nm|Wh|ms|mbar)\\b|(?<![\\w/-])[a-z-]+(\\.[a-z0-9-]+)+|\\b[A-Z][0-9a-f]{12}\\b");

    /** A decimal figure with a point; neither a clause, a table of a standard, a heading of the customs tariff nor a class of bolts. */
    private static final Pattern POINT = Pattern.compile(
            "(?<![\\w.,/-])(?<!(Tabelle|tableau) )(?!(8\\.8|10\\.9|12\\.9|\\d{4}\\.\\d\\d)\\b)\\d+\\.\\d+(?![\\w.-]*[.\\d-]|,\\d)");

    private static final Pattern BETWEEN = Pattern.compile("; | · |: |, |(?<=[.!?]) ");

    /** Words that neither German nor French has. */
    private static final Pattern OF_ENGLISH =
            Pattern.compile("(?<![\\p{L}-])(of|the|and|with|from|each|is|are|for|to|not|by|than)(?![\\p{L}-])");

    private static final Set<String> NAMES = new HashSet<>();

    /** Those of them that are longer than a word, the longest first. */
    private static final List<String> SENTENCES = new ArrayList<>();

    private static final Map<String, List<KitInWork>> KITS = new HashMap<>();

    @TempDir
    private static Path folder;

    @BeforeAll
    static void makeKits() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("catalog"))) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".json")).toList()) {
                names(Files.readString(file));
            }
        }
        NAMES.stream()
                .filter(name -> name.contains(" ") && name.length() > 8)
                .flatMap(name -> Stream.of(name, name.replaceFirst("\\.$", "")))
                .distinct()
                .sorted(Comparator.comparing(String::length).reversed())
                .forEach(SENTENCES::add);
        for (String language : List.of("en", "de", "fr")) {
            Path own = speaking(language);
            KITS.put(
                    language, ORDERS.stream().map(order -> Demo.kit(own, order)).toList());
        }
    }

    /** What stands in the data in one language only is a name, or a text that its author wrote so. */
    private static void names(String json) {
        Matcher text = TEXT.matcher(json);
        while (text.find()) {
            NAMES.add(text.group(1).replace("\\\"", "\""));
        }
        Matcher english = ENGLISH.matcher(json);
        while (english.find()) {
            if (!english.group(1).equals(english.group(2))) {
                NAMES.remove(english.group(1));
            }
        }
    }

    /** The demo catalogue of a workshop that speaks that language. */
    private static Path speaking(String language) throws IOException {
        Path copy = folder.resolve(language);
        try (Stream<Path> files = Files.walk(Path.of("catalog"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path to = copy.resolve(Path.of("catalog").relativize(file));
                Files.createDirectories(Objects.requireNonNull(to.getParent()));
                Files.copy(file, to);
            }
        }
        Path workshop = copy.resolve("workshop/workshop.json");
        String text = Files.readString(workshop);
        Files.writeString(
                workshop, text.replace("\"languages\":", "\"language\": \"" + language + "\",\n \"languages\":"));
        try (Stream<Path> orders = Files.list(copy.resolve("orders"))) {
            for (Path order : orders.toList()) {
                String said = Files.readString(order);
                Files.writeString(
                        order, said.replace(" \"language\": \"en\",\n", " \"language\": \"" + language + "\",\n"));
            }
        }
        return copy;
    }

    private static Stream<Report> sheets(String trade, String language) {
        return KITS.get(language).stream().flatMap(kit -> sheets(trade, kit));
    }

    private static Stream<Report> sheets(String trade, KitInWork kit) {
        if (trade.equals("bill")) {
            OrderPricing pricing = OrderPricing.of(kit.bill(), kit.catalogue(), QuoteOptions.asked(kit, Given.NONE));
            return Stream.of(
                    BillReport.compose(
                            pricing,
                            PickingTrade.list(kit),
                            KitTrades.of(kit, Findings.NONE).found()),
                    BillReport.jobCards(pricing.costed()));
        }
        Trade worker = Stream.concat(Trades.ALL.stream(), Stream.of(new BuyingTrade()))
                .filter(each -> each.name().equals(trade))
                .findFirst()
                .orElseThrow();
        Outcome<List<TradeResult>> worked = worker.work(
                List.of(kit),
                // with a kit it is only said what the schedule finds
                trade.equals("schedule") ? SchedulingTrade.from(LocalDate.of(2026, 6, 1)) : worker.forKit());
        return ((Outcome.Sound<List<TradeResult>>) worked)
                .value().stream()
                        .flatMap(result -> result.sheets().stream())
                        .filter(sheet -> !sheet.folder().equals(TradeResult.FOR_CUSTOMERS)
                                || sheet.report().get().file().equals("dangerous-goods"))
                        .map(sheet -> sheet.report().get());
    }

    private static List<Text> texts(String trade, String language) {
        return sheets(trade, language)
                .flatMap(report -> SheetTexts.of(report).stream())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("spoken")
    void say_every_word_in_it(String language, String trade) throws IOException {
        Set<Text> english = Set.copyOf(new HashSet<>(texts(trade, "en")));
        Set<String> alike =
                Set.copyOf(Files.readAllLines(Path.of("src/test/resources/spoken/alike_" + language + ".txt")));
        Set<String> untranslated = new TreeSet<>();
        texts(trade, language).forEach(text -> {
            if (english.contains(text) ? !isAlike(text, alike) : isMixed(text)) {
                untranslated.add((english.contains(text) ? "same:  " : "mixed: ") + text.says());
            }
        });
        assertThat(untranslated).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("spoken")
    void write_every_decimal_with_a_comma(String language, String trade) {
        Set<String> pointed = texts(trade, language).stream()
                .filter(text -> POINT.matcher(withoutSentences(text)).find())
                .map(Text::says)
                // a section of the manual
                .filter(text -> !text.matches("\\d+\\.\\d"))
                .collect(Collectors.toSet());
        assertThat(pointed).isEmpty();
    }

    static Stream<Arguments> spoken() {
        return DONE.stream()
                .sorted()
                .flatMap(trade -> Stream.of("de", "fr").map(language -> Arguments.of(language, trade)));
    }

    /** Whether all its words are the same in both languages, but for names. */
    private static boolean isAlike(Text text, Set<String> alike) {
        String own = WHOLE.matcher(withoutSentences(text)).replaceAll("");
        return Stream.of(BETWEEN.split(own))
                .map(String::strip)
                .filter(piece -> !(text.filled() && NAMES.contains(piece)))
                .flatMap(piece -> WORD.matcher(piece).results().map(MatchResult::group))
                .allMatch(alike::contains);
    }

    private static boolean isMixed(Text text) {
        return OF_ENGLISH.matcher(withoutSentences(text)).find();
    }

    /** Without what the data say in one language only. */
    private static String withoutSentences(Text text) {
        String own = text.says().replace('\u00A0', ' ').replace(" : ", ": ");
        if (text.filled() && own.contains(" ")) {
            for (String name : SENTENCES) {
                own = own.replace(name, "");
            }
        }
        return own;
    }
}
