package boltlore.trades.picking;

import boltlore.catalogue.Caution;
import boltlore.findings.Findings;
import boltlore.order.Order;
import boltlore.report.FindingsTable;
import boltlore.report.Heading;
import boltlore.report.Kind;
import boltlore.report.Look;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;
import boltlore.trades.DocumentsTable;
import boltlore.trades.KitInWork;
import boltlore.walking.RouteRule;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The picking list of one order: the pick list, pages for what lies in no bin, serial numbers, bags by fit stage. */
final class PickingReport {

    private static final String HOW_TO = "Take what stands under 'Take': it holds one spare for each 20, or part of 20,"
            + " small fixings and self-locking nuts of a bag. Write down below what is short and go on; do not put another part in its place";
    private static final String NO_OTHER = HOW_TO + ".";
    private static final String OR_OTHER =
            HOW_TO + ", except what stands under 'Where one is short': then write down what was taken instead.";
    private static final Map<String, String> LEADS = Map.of("lift-two", "Two-person lift", "lift-gear", "Lifting gear");

    private PickingReport() {}

    static Report compose(KitInWork kit, PickingList list, Findings findings) {
        Order order = kit.order();
        ReportBuilder report = Report.named("picking-list", "Picking list " + order.name())
                .about("Order " + order.name() + ", " + order.customer())
                .by(kit.workshop().name())
                .in(kit.words(PickingReport.class))
                .found(kit.answered(findings))
                .glance(new Heading(order.name() + ", " + kit.says(kit.family().says()), Look.TITLE))
                .glance(glance(list).build());
        if (order.placed() != null) {
            report.dated(order.placed());
        }
        PickPages pages = new PickPages(kit, PickColumns.of(list));
        report.page(pickList(kit, list, findings, pages));
        apart(report, list.fromCoating(), pages::fromCoating);
        apart(report, list.extras(), pages::extras);
        apart(report, list.onHold(), pages::onHold);
        apart(report, kit.bill().reused().toList(), pages::reused);
        apart(report, list.numbered(), pages::serials);
        apart(report, list.bags(), pages::bags);
        return report.build();
    }

    /** Nothing gets a page where there is none of it. */
    private static <R> void apart(ReportBuilder report, List<R> rows, Function<List<R>, PageBuilder> page) {
        if (!rows.isEmpty()) {
            report.page(page.apply(rows));
        }
    }

    private static ParticularsBuilder glance(PickingList list) {
        ParticularsBuilder says = Particulars.named("glance");
        count(says, "bins", "Lines from bins", list.walk());
        count(says, "coating", "Lines from coating", list.fromCoating());
        count(says, "outside", "Lines outside the kit", list.extras());
        count(says, "held", "Lines on hold", list.onHold());
        return says;
    }

    private static void count(ParticularsBuilder says, String key, String label, Collection<?> rows) {
        says.say(key, label, Kind.whole(), BigDecimal.valueOf(rows.size()));
    }

    private static PageBuilder pickList(KitInWork kit, PickingList list, Findings findings, PickPages pages) {
        PageBuilder page = Page.named("Pick list").frozen(2).footer(pages.footer("pick list"));
        page.title("Picking list " + kit.order().name()).add(head(kit, list));
        for (String code : list.cautions()) {
            Caution caution = kit.workshop().cautions().get(code);
            if (caution != null) {
                page.caution(lead(code), kit.says(caution.says()));
            }
        }
        page.note(list.hasAlternates() ? OR_OTHER : NO_OTHER).add(pages.walk(list.walk()));
        pages.alternates(page, list.walk());
        page.heading("Short").add(PickPages.shortOf());
        DocumentsTable.add(page, kit.bill().picked());
        FindingsTable.add(page, kit.answered(findings), kit.workshop().language());
        return page.signatures("Picked by");
    }

    private static ParticularsBuilder head(KitInWork kit, PickingList list) {
        Order order = kit.order();
        ParticularsBuilder head = Particulars.named("order")
                .say("order", "Order", order.name())
                .say("customer", "Customer", order.customer())
                .say("vehicle", "Kit for", kit.says(kit.family().says()));
        if (!order.partner().isEmpty()) {
            head.say("partner", "Goes to", order.partner());
        }
        if (order.placed() != null) {
            head.say("placed", "Ordered", order.placed());
        }
        if (order.due() != null) {
            head.say("due", "Due", order.due());
        }
        walk(kit, list).ifPresent(walk -> head.say("walk", "Walk", walk));
        return head.say("lines", "To pick", lines(list)).leave("trolley", "Trolley or pallet");
    }

    /** '212 m as listed, at the shortest 198 m'; empty where the aisles are not measured. */
    private static Optional<String> walk(KitInWork kit, PickingList list) {
        List<String> bins = list.walk().stream().map(row -> row.part().bin()).toList();
        return Walk.of(kit.catalogue()).lengths(bins).map(lengths -> {
            String unmeasured = lengths.unmeasured() == 0
                    ? ""
                    : "; without " + lengths.unmeasured() + " bins that are not measured";
            return metres(lengths.asListed()) + " m in the usual order, at the shortest "
                    + metres(lengths.of(RouteRule.SHORTEST)) + " m" + unmeasured;
        });
    }

    private static long metres(long mm) {
        return Math.round(mm / 1000.0);
    }

    /** '87 lines from bins, 12 from coating, 1 outside the kit, 2 on hold'. */
    private static String lines(PickingList list) {
        return list.walk().size() + " lines from bins"
                + more(list.fromCoating(), "from coating")
                + more(list.extras(), "outside the kit")
                + more(list.onHold(), "on hold");
    }

    private static String more(Collection<?> rows, String words) {
        return rows.isEmpty() ? "" : ", " + rows.size() + " " + words;
    }

    /** A caution in a word or two, before its sentence: 'High voltage', 'Two-person lift'. */
    private static String lead(String code) {
        String words = code.replace('-', ' ');
        return LEADS.getOrDefault(code, Character.toUpperCase(words.charAt(0)) + words.substring(1));
    }

    /** Beside the part that they belong to: 'high voltage, two-person lift'. */
    static String beside(List<String> codes) {
        return codes.stream()
                .map(PickingReport::lead)
                .map(lead -> Character.toLowerCase(lead.charAt(0)) + lead.substring(1))
                .collect(Collectors.joining(", "));
    }
}
