package boltlore.report;

import boltlore.findings.Finding;
import boltlore.findings.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Says at the head of a sheet what stops its order, whichever room found it: whoever cuts, coats, picks or packs reads
 * his own sheet only.
 */
public final class StopsAtHead {

    /** What programs know such a line by. */
    public static final String KEY = "stop";

    /**
     * Something that stops an order.
     *
     * @param order its name where the sheet is of several orders, else empty
     */
    public record Stop(String order, Finding finding) {

        private String says(String language) {
            String sentence = finding.says(language);
            return order.isEmpty() ? sentence : order + Note.colon(language) + sentence;
        }
    }

    private StopsAtHead() {}

    /**
     * The report with a line for each stop under the title of its first page and in what a terminal shows, in the page's
     * language; its further pages, which may hang elsewhere, say in a few words what it is and where to read it all, and so
     * does the edge of each sheet of paper.
     *
     * @param stops in the order in which they are told; none leaves the report as it is
     */
    public static Report on(Report report, List<Stop> stops) {
        if (stops.isEmpty()) {
            return report;
        }
        Page first = report.pages().get(0);
        return with(
                report,
                lines(stops, "en"),
                language -> edge(first, stops, language),
                (at, language) -> at == 0 ? lines(stops, language) : List.of(pointer(first, stops, language)));
    }

    /**
     * The report with one line on each page that says it must not be sent, and nothing of what was found: a sheet that leaves
     * the house holds no sentence that was written for the workshop, and its pages may go apart.
     *
     * @param stops none leaves the report as it is
     */
    public static Report forCustomers(Report report, List<Stop> stops) {
        return stops.isEmpty()
                ? report
                : with(
                        report,
                        List.of(unsent("en")),
                        language -> Sentences.word("stopped.send", language),
                        (at, language) -> List.of(unsent(language)));
    }

    private static Block unsent(String language) {
        return Note.caution(KEY, Sentences.word("stopped.send", language), Sentences.word("stopped.ask", language));
    }

    /**
     * @param edge what stands above each sheet of paper, in that language
     * @param onPage the lines of the page with that index, in that language
     */
    private static Report with(
            Report report,
            List<Block> glance,
            UnaryOperator<String> edge,
            BiFunction<Integer, String, List<Block>> onPage) {
        List<Page> pages = IntStream.range(0, report.pages().size())
                .mapToObj(at -> {
                    Page page = report.pages().get(at);
                    String language = page.languageIn(report);
                    PrintSetup print = page.print().withHeader(edge.apply(language));
                    return new Page(
                            page.name(), page.language(), print, under(page.blocks(), onPage.apply(at, language)));
                })
                .toList();
        return new Report(
                report.file(),
                report.title(),
                report.subject(),
                report.author(),
                report.dated(),
                report.language(),
                report.findings(),
                under(report.glance(), glance),
                pages,
                report.data());
    }

    private static List<Block> lines(List<Stop> stops, String language) {
        return stops.stream()
                .<Block>map(stop -> Note.caution(KEY, lead(List.of(stop), language), stop.says(language)))
                .distinct()
                .toList();
    }

    /** What must not go on: all work, or only the shipping where no more than that is stopped. */
    private static String lead(List<Stop> stops, String language) {
        boolean shipping =
                stops.stream().allMatch(stop -> stop.finding().kind().room().equals("ship"));
        return Sentences.word(shipping ? "stopped.ship" : "stopped", language);
    }

    /** What was found, else whose it is, else where it stands: the first of them that has room, never the half of one. */
    private static String edge(Page first, List<Stop> stops, String language) {
        String lead = lead(stops, language) + Note.colon(language);
        List<String> orders = stops.stream().map(Stop::order).distinct().toList();
        boolean several = orders.size() > 1;
        String where = Sentences.word(several ? "stopped.orders" : "stopped.see", language)
                .replace("{page}", first.name())
                .replace("{count}", String.valueOf(orders.size()));
        return Stream.of(titles(stops, language), several ? String.join(", ", orders) : "")
                .filter(says -> !says.isEmpty() && lead.length() + says.length() <= PrintSetup.LONGEST_LINE)
                .findFirst()
                .map(lead::concat)
                .orElse(lead + where);
    }

    private static Block pointer(Page first, List<Stop> stops, String language) {
        String where = Sentences.word("stopped.where", language)
                .replace("{page}", first.name())
                .replace("{count}", String.valueOf(stops.size()));
        return Note.caution(KEY, lead(stops, language), titles(stops, language) + ". " + where);
    }

    /** 'BL-7: Axle over its limit; Fuse too large', each once. */
    private static String titles(List<Stop> stops, String language) {
        return stops.stream()
                .map(stop -> (stop.order().isEmpty() ? "" : stop.order() + Note.colon(language))
                        + stop.finding().kind().title(language))
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private static List<Block> under(List<Block> blocks, List<Block> lines) {
        boolean titled = !blocks.isEmpty() && blocks.get(0) instanceof Heading heading && heading.look() == Look.TITLE;
        List<Block> all = new ArrayList<>(blocks);
        all.addAll(titled ? 1 : 0, lines);
        return all;
    }
}
