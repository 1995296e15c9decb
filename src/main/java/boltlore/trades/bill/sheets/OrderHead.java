package boltlore.trades.bill.sheets;

import boltlore.catalogue.Catalogue;
import boltlore.measure.Wording;
import boltlore.order.Order;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.PrintSetup;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;
import boltlore.report.Words;
import boltlore.trades.picking.PickingTrade;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What every page of the workshop's own workbook says of its order. */
final class OrderHead {

    private static final int REVISION_SHOWN = 12;

    private final Order order;
    private final Catalogue catalogue;

    OrderHead(Order order, Catalogue catalogue) {
        this.order = order;
        this.catalogue = catalogue;
    }

    ReportBuilder book(String file, String title) {
        ReportBuilder book = Report.named(file, title)
                .about("Order " + order.name() + ", " + vehicle())
                .by(catalogue.workshop().name())
                .in(Words.of(language(), BillReport.class, PickingTrade.class));
        return order.placed() == null ? book : book.dated(order.placed());
    }

    /** A landscape page with title, particulars and footer. */
    PageBuilder page(String name, String title) {
        return Page.named(name).landscape().title(title).add(particulars()).footer(footer());
    }

    /** For a page that is narrow enough. */
    PrintSetup portrait() {
        return PrintSetup.PORTRAIT.withFooter(footer());
    }

    ParticularsBuilder particulars() {
        ParticularsBuilder says = Particulars.named("order")
                .say("order", "Order", order.name())
                .say("vehicle", "Vehicle", vehicle())
                .say("customer", "Customer", order.customer());
        if (!order.partner().isEmpty()) {
            says.say("partner", "Partner workshop", order.partner());
        }
        day(says, "placed", "Date of the order", order.placed());
        day(says, "due", "Kit due", order.due());
        String currency = catalogue.workshop().currency().getCurrencyCode();
        return says.say("currency", "Costs in", currency).say("catalogue", "Catalogue revision", revision());
    }

    static void day(ParticularsBuilder says, String key, String label, @Nullable LocalDate day) {
        if (day == null) {
            says.say(key, label, "not given");
        } else {
            says.say(key, label, day);
        }
    }

    /** What the workshop's own sheets speak. */
    String language() {
        return catalogue.workshop().language();
    }

    String says(Wording name) {
        return name.in(language());
    }

    /** 'Sum of high voltage': English says its own name, any other language what the workshop calls it there. */
    static String sumOf(String subSystem, Catalogue catalogue) {
        String language = catalogue.workshop().language();
        boolean english = language.equals(Wording.ENGLISH);
        return "Sum of " + (english ? subSystem : catalogue.subSystemSays(subSystem, language));
    }

    String vehicle() {
        return says(order.choices().family().says());
    }

    String footer() {
        String placed = order.placed() == null ? "" : " · " + order.placed();
        return catalogue.workshop().name() + " · order " + order.name() + placed + " · catalogue " + revision();
    }

    /** The first digits of the content hash are enough to tell two catalogues apart on paper. */
    String revision() {
        String whole = catalogue.revision();
        return whole.substring(0, Math.min(REVISION_SHOWN, whole.length()));
    }
}
