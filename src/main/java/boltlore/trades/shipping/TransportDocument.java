package boltlore.trades.shipping;

import boltlore.measure.Digits;
import boltlore.measure.Party;
import boltlore.measure.Wording;
import boltlore.report.CautionNotes;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.report.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The draft of the document that dangerous goods travel with, in the order's language, and on a second page in English,
 * which the road rules take from every country (5.4.1.4.1 of ADR: an official language of the forwarding country and, if
 * that is none of them, English, French or German). Particulars of 5.4.1.1.1 (a) to (k) of ADR, in their order and by their letters; by sea those of 5.4.1.4 and
 * 5.4.1.5 of the IMDG Code.
 */
final class TransportDocument {

    private static final String FOR_ADVISER = "for the adviser";
    private static final String NONE = "–";

    /** What the rules ask for, by its letter, and what stands there. */
    private record Particular(String letter, String says, String text) {}

    private static final TableSpec<Particular> PARTICULARS = TableSpec.<Particular>named("particulars")
            .text("letter", "", 5, Particular::letter)
            .text("particular", "Particular", 44, Particular::says)
            .text("text", "Entry", 60, Particular::text);

    private final Shipment shipment;
    private final boolean road;
    private final String language;

    private TransportDocument(Shipment shipment, String language) {
        this.shipment = shipment;
        this.language = language;
        this.road = shipment.route().by() == By.ROAD;
    }

    static Report compose(Shipment shipment) {
        String title = "Transport document for dangerous goods";
        String language = shipment.order().language();
        ReportBuilder report = Report.named("dangerous-goods", title)
                .about("Order " + shipment.order().name())
                .by(shipment.workshop().name())
                .in(Words.of(language, TransportDocument.class));
        if (shipment.order().placed() != null) {
            report.dated(shipment.order().placed());
        }
        report.page(new TransportDocument(shipment, language).page("Transport document", title));
        if (!language.equals(Wording.ENGLISH)) {
            report.page(new TransportDocument(shipment, Wording.ENGLISH)
                    .page("In English", title)
                    .in(Wording.ENGLISH));
        }
        return report.build();
    }

    private PageBuilder page(String name, String title) {
        PageBuilder page = Page.named(name)
                .footer(shipment.workshop().name() + " · " + title + ", order "
                        + shipment.order().name());
        page.title(title + ", draft");
        CautionNotes.always(page, "dangerous-goods", shipment.workshop(), language);
        page.heading("Description of the goods: (a), (b), (c), (d) and (k), in this order and with nothing between");
        shipment.dangerous().forEach(goods -> page.note("description", inLine(goods)));
        page.heading("Particulars, " + rules()).add(particulars());
        if (shipment.route().by() == By.SEA) {
            page.note(
                    "declaration",
                    "I hereby declare that the contents of this consignment are fully and accurately described above by the"
                            + " proper shipping name, and are classified, packaged, marked and labelled or placarded and are"
                            + " in all respects in proper condition for transport according to applicable international and"
                            + " national government regulations. (5.4.1.6.1)");
        }
        return page.signatures("Consignor (trained and appointed person)", "Carrier");
    }

    private String rules() {
        By by = shipment.route().by();
        return switch (by) {
            case ROAD -> by.rules() + ", 5.4.1.1.1";
            case SEA -> by.rules() + ", 5.4.1.4 and 5.4.1.5";
            case AIR -> by.rules() + ": made out by a shipper trained for air on the declaration's own form";
        };
    }

    /** 'UN 3480 LITHIUM ION BATTERIES, 9, (E)'; no packing group is assigned to batteries. */
    private String inLine(DangerousGoods goods) {
        return goods.entry()
                .map(un -> un.un() + " " + un.properName() + ", " + un.hazardClass() + (road ? ", " + un.tunnel() : ""))
                .orElse(goods.un() + " – " + FOR_ADVISER);
    }

    private TableBuilder particulars() {
        TableBuilder table = PARTICULARS.empty();
        if (!language.equals(shipment.order().language())) {
            table.about("language", language);
        }
        for (DangerousGoods goods : shipment.dangerous()) {
            table.group(goods.un(), goods.un() + " in " + NumberFormats.crates(goods.crates()));
            of(goods).forEach(each -> PARTICULARS.add(table, "", each));
        }
        table.group("consignment", "For the consignment");
        ofAll().forEach(each -> PARTICULARS.add(table, "", each));
        if (road) {
            table.group("categories", "Quantity and calculated value of each transport category, " + By.ROAD.rules());
            byCategory().forEach(each -> PARTICULARS.add(table, "", each));
        }
        return table;
    }

    private List<Particular> of(DangerousGoods goods) {
        UnNumber un = goods.entry().orElse(null);
        List<Particular> all = new ArrayList<>(List.of(
                new Particular("(a)", "UN number, preceded by the letters 'UN'", goods.un()),
                new Particular("(b)", "Proper shipping name", un == null ? FOR_ADVISER : un.properName()),
                new Particular(
                        "(c)",
                        un != null && un.lithium() ? "Class number (lithium batteries)" : "Label model numbers",
                        un == null ? FOR_ADVISER : un.hazardClass()),
                new Particular("(d)", "Packing group, where assigned", un == null ? FOR_ADVISER : NONE),
                new Particular("(e)", "Number and description of the packages", packages(goods)),
                new Particular("(f)", "Total quantity", quantity(goods)),
                new Particular("5.2.2", "Label on each package", un == null ? FOR_ADVISER : "No. " + un.label())));
        if (road) {
            all.add(new Particular("(k)", "Tunnel restriction code", un == null ? FOR_ADVISER : un.tunnel()));
        }
        return all;
    }

    private List<Particular> ofAll() {
        Party seller = shipment.parties().seller();
        String phone = seller.phone().isEmpty() ? "" : "; " + seller.phone();
        String consignee = shipment.parties().consignee().map(Party::inLine).orElse("to be written in");
        return List.of(
                new Particular("(g)", "Name and address of the consignor", seller.inLine() + phone),
                new Particular("(h)", "Name and address of the consignee(s)", consignee),
                new Particular("(i)", "Declaration of a special agreement or provision", declarations()),
                new Particular("(j)", "Reserved", NONE));
    }

    /** For the exemption of small loads: quantity and calculated value of each transport category (ADR 5.4.1.1.1 (f), note 1). */
    private List<Particular> byCategory() {
        SortedMap<Integer, List<DangerousGoods>> categories = shipment.dangerous().stream()
                .filter(goods -> goods.entry().isPresent())
                .collect(Collectors.groupingBy(
                        goods -> goods.entry().map(UnNumber::category).orElse(0), TreeMap::new, Collectors.toList()));
        List<Particular> all = new ArrayList<>();
        categories.forEach((category, goods) -> {
            BigDecimal kg = goods.stream().map(DangerousGoods::netKg).reduce(BigDecimal.ZERO, BigDecimal::add);
            BigDecimal points = RoadPoints.of(goods).points();
            all.add(new Particular(
                    "1.1.3.6",
                    "Transport category " + category,
                    NumberFormats.kg(kg) + ", calculated value " + Digits.upTo(points, 1)));
        });
        RoadPoints points = RoadPoints.of(shipment.dangerous());
        all.add(new Particular(
                "1.1.3.6",
                "All categories, of this order",
                Digits.upTo(points.points(), 1)
                        + (points.exempt()
                                ? ", not above " + RoadPoints.LIMIT
                                        + ": the exemption may be used if nothing else in the vehicle adds to it"
                                : ", above " + RoadPoints.LIMIT + ": no exemption")));
        return all;
    }

    private String declarations() {
        boolean smallRun = shipment.dangerous().stream()
                .flatMap(DangerousGoods::packed)
                .anyMatch(packed -> shipment.known(packed.goods()).smallRun());
        return smallRun ? "Transport in accordance with special provision 310" : NONE;
    }

    private String packages(DangerousGoods goods) {
        return goods.crates().stream()
                .collect(Collectors.groupingBy(
                        crate -> crate.type().says().in(language)
                                + (crate.type().unMark().isEmpty()
                                        ? ""
                                        : ", " + crate.type().unMark()),
                        TreeMap::new,
                        Collectors.counting()))
                .entrySet()
                .stream()
                .map(kind -> kind.getValue() + " × " + kind.getKey())
                .collect(Collectors.joining("; "));
    }

    private static String quantity(DangerousGoods goods) {
        BigDecimal gross = goods.crates().stream().map(Crate::grossKg).reduce(BigDecimal.ZERO, BigDecimal::add);
        String energy = goods.wattHours().signum() == 0 ? "" : "; " + Digits.upTo(goods.wattHours(), 0) + " Wh in all";
        return NumberFormats.kg(goods.netKg()) + " net mass of the articles, " + NumberFormats.kg(gross)
                + " gross mass; "
                + Digits.upTo(goods.pieces(), 0)
                + (goods.pieces().compareTo(BigDecimal.ONE) == 0 ? " piece" : " pieces") + energy;
    }
}
