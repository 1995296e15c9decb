package boltlore.desk.sheets;

import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Role;
import boltlore.desk.frame.Room;
import boltlore.desk.frame.Sentences;
import boltlore.desk.frame.Stretch;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.SheetFile;
import boltlore.report.Table;
import boltlore.report.html.HtmlWriter;
import boltlore.trades.orders.SheetFormats;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Every room's sheets of an order. They stand in no row of rooms: each order leads to its own. */
public final class SheetPages implements Room {

    /** Signs of a sheet that is shown at once: with its frame it weighs no more than 150 kB. */
    private static final int LONGEST = 140_000;

    private final KitSheets sheets;

    public SheetPages(Workshop workshop) {
        this.sheets = new KitSheets(workshop);
    }

    @Override
    public Role role() {
        return Role.ANY;
    }

    @Override
    public String path() {
        return "/sheets";
    }

    @Override
    public String says() {
        return "";
    }

    @Override
    public void open(Doors doors) {
        doors.look("/sheets/{order}", this::list);
        doors.look("/sheets/{order}/{sheet}", call -> with(call, report -> sheet(call, report)));
        doors.look("/sheets/{order}/{sheet}/{file}", call -> with(call, report -> file(call, report)));
    }

    /** Those that the workshop works on, the first due first. */
    @Override
    public void ahead(LocalDate today) {
        sheets.ahead(today);
    }

    private Answer list(Call call) {
        String order = call.path("order");
        Outcome<List<Report>> found = sheets.of(order, call.today());
        if (found instanceof Outcome.Sound<List<Report>> all) {
            List<Row> rows = all.value().stream()
                    .map(report -> new Row(report.file(), report.title(), files(report)))
                    .toList();
            return Answer.page(order + ": sheets", "sheets/list.jte", new Sheets(order, rows, List.of()));
        }
        return Answer.page(
                order + ": sheets", "sheets/list.jte", new Sheets(order, List.of(), Sentences.of(found.faults())));
    }

    /**
     * All sheets of an order.
     *
     * @param why there are none, in sentences
     */
    public record Sheets(String order, List<Row> rows, List<String> why) {}

    /** A sheet, and names of the files beside it. */
    public record Row(String sheet, String title, List<String> files) {}

    /**
     * A sheet as a page.
     *
     * @param leaves names of its pages, where it is too long to be shown at once; else none
     * @param leaf that is shown; empty where all are
     * @param rows of it that are shown
     */
    public record Sheet(
            String order,
            String sheet,
            String title,
            String language,
            String pages,
            List<String> leaves,
            String leaf,
            Stretch<Integer> rows,
            List<String> files) {}

    /** The workbook, all of it as JSON, and a CSV for each of its tables. */
    private static List<String> files(Report report) {
        Stream<String> tables = Stream.concat(
                report.tables().map(Table::name).distinct(),
                Stream.of("facts").filter(some -> !report.facts().isEmpty()));
        return Stream.concat(
                        Stream.of(report.file() + ".xlsx", report.file() + ".json"),
                        tables.map(table -> report.file() + "-" + table + ".csv"))
                .toList();
    }

    private Answer with(Call call, Function<Report, Answer> answer) {
        Outcome<List<Report>> found = sheets.of(call.path("order"), call.today());
        if (!(found instanceof Outcome.Sound<List<Report>> all)) {
            return new Answer.Missing(Sentences.missing(found.faults()));
        }
        return all.value().stream()
                .filter(report -> report.file().equals(call.path("sheet")))
                .findFirst()
                .map(answer)
                .orElseGet(() -> new Answer.Missing("This order has no such sheet."));
    }

    /** A long one leaf by leaf; all of it, as it is printed, where that is asked for. */
    private static Answer sheet(Call call, Report report) {
        String whole = HtmlWriter.pages(report);
        List<String> leaves = whole.length() <= LONGEST
                ? List.of()
                : report.pages().stream().map(Page::name).toList();
        String asked = call.said("leaf");
        String leaf = leaves.isEmpty() || asked.equals("all") ? "" : leaves.contains(asked) ? asked : leaves.get(0);
        LongLeaf part = LongLeaf.of(
                report,
                report.pages().get(Math.max(0, leaves.indexOf(leaf))),
                call,
                LONGEST,
                "/sheets/" + call.path("order") + "/" + report.file() + "?leaf="
                        + URLEncoder.encode(leaf, StandardCharsets.UTF_8));
        return Answer.page(
                HtmlWriter.title(report),
                "sheets/sheet.jte",
                new Sheet(
                        call.path("order"),
                        report.file(),
                        report.title(),
                        report.language(),
                        leaf.isEmpty() ? whole : part.html(),
                        leaves,
                        leaf,
                        part.rows(),
                        files(report)));
    }

    /** The same report in another format. */
    private static Answer file(Call call, Report report) {
        String wanted = call.path("file");
        if (!files(report).contains(wanted)) {
            return new Answer.Missing("There is no such file.");
        }
        List<SheetFile> all = SheetFormats.write(List.of(report));
        return all.stream()
                .filter(file ->
                        file.name().substring(file.name().lastIndexOf('/') + 1).equals(wanted))
                .findFirst()
                .<Answer>map(Answer.Handed::new)
                .orElseGet(() -> new Answer.Missing("There is no such file."));
    }
}
