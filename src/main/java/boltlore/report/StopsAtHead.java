package boltlore.report;

import boltlore.findings.Finding;
import boltlore.findings.Sentences;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
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

    /** The report of one order with what stops it; see {@link #on(Report, List, Collection)}. */
    public static Report on(Report report, List<Stop> stops) {
        return on(report, stops, List.of());
    }

    /**
     * The report with a line for each stop under the title of its first page and in what a terminal shows, in the report's
     * language, which is the workshop's: who works by a page among them that speaks the customer's is stopped all the same.
     * Its further pages, which may hang elsewhere, say in a few words what it is and where to read it all, and so does the
     * edge of each sheet of paper. A further page that names orders of these, but none that is stopped, says nothing.
     *
     * @param stops in the order in which they are told; none leaves the report as it is
     * @param orders the names of all orders that the report is of, or none where it is of one
     */
    public static Report on(Report report, List<Stop> stops, Collection<String> orders) {
        if (stops.isEmpty()) {
            return report;
        }
        Page first = report.pages().get(0);
        String language = report.language();
        return with(report, lines(stops, language), page -> {
            boolean isFirst = page.name().equals(first.name());
            List<Stop> here = isFirst ? stops : ofPage(page, stops, orders);
            if (here.isEmpty()) {
                return Head.NONE;
            }
            List<Block> says = isFirst ? lines(stops, language) : List.of(pointer(first, here, language));
            return new Head(edge(first, here, language), says);
        });
    }

    /** Those of orders that the page names; all where it names none at all, and those that are of no single order. */
    private static List<Stop> ofPage(Page page, List<Stop> stops, Collection<String> orders) {
        Set<String> named = PageWords.namedOn(page, orders);
        return named.isEmpty()
                ? stops
                : stops.stream()
                        .filter(stop -> stop.order().isEmpty() || named.contains(stop.order()))
                        .toList();
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
                : with(report, List.of(unsent("en")), page -> {
                    String language = page.languageIn(report);
                    return new Head(Sentences.word("stopped.send", language), List.of(unsent(language)));
                });
    }

    private static Block unsent(String language) {
        return Note.caution(KEY, Sentences.word("stopped.send", language), Sentences.word("stopped.ask", language));
    }

    /**
     * What a page says of it.
     *
     * @param edge above each sheet of paper, or empty
     */
    private record Head(String edge, List<Block> lines) {
        private static final Head NONE = new Head("", List.of());
    }

    private static Report with(Report report, List<Block> glance, Function<Page, Head> says) {
        List<Page> pages = report.pages().stream()
                .map(page -> {
                    Head head = says.apply(page);
                    return head.lines().isEmpty()
                            ? page
                            : new Page(
                                    page.name(),
                                    page.tab(),
                                    page.language(),
                                    page.print().withHeader(head.edge()),
                                    under(page.blocks(), head.lines()));
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
                .replace("{page}", first.tab())
                .replace("{count}", String.valueOf(orders.size()));
        return Stream.of(titles(stops, language), several ? String.join(", ", orders) : "")
                .filter(says -> !says.isEmpty() && lead.length() + says.length() <= PrintSetup.LONGEST_LINE)
                .findFirst()
                .map(lead::concat)
                .orElse(lead + where);
    }

    private static Block pointer(Page first, List<Stop> stops, String language) {
        String where = Sentences.word("stopped.where", language)
                .replace("{page}", first.tab())
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
