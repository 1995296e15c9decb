package boltlore.trades.spares;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.catalogue.Buying;
import boltlore.catalogue.Joined;
import boltlore.catalogue.Part;
import boltlore.catalogue.Service;
import boltlore.catalogue.Source;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.order.Order;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.FindingsTable;
import boltlore.report.Heading;
import boltlore.report.Look;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.KitFinding;
import boltlore.trades.KitInWork;
import boltlore.trades.Room;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The service spares list: what of a kit is replaced, how often, and from where. */
public final class SparesTrade extends Trade {

    /** Days in a month, when a lead time in days is held against an interval in months: rounded to the strict side. */
    private static final int MONTH_DAYS = 28;

    private static final TradeOption<Integer> MONTHS =
            span("--months", "MONTHS", "Count what is replaced within so many months.", 600);
    private static final TradeOption<Integer> KM =
            span("--km", "KM", "Count what is replaced within so many kilometres.", 9_999_999);

    private static final String COUNTED = "A part is replaced after its months or its kilometres, whichever come first;"
            + " what is in the kit now is not counted.";

    /**
     * A part that is replaced, in one sub-system.
     *
     * @param quantity in the kit, in the part's unit
     * @param changes within the span that is asked for; null where none is
     */
    private record Spare(
            String subSystem,
            Part part,
            Service service,
            BigDecimal quantity,
            @Nullable Integer changes) {

        @Nullable
        BigDecimal needed() {
            return changes == null ? null : quantity.multiply(BigDecimal.valueOf(changes));
        }

        @Nullable
        String bought(Function<Buying, String> what) {
            Buying buying = part.buying();
            return buying == null ? null : what.apply(buying);
        }

        Spare and(Spare other) {
            return new Spare(subSystem, part, service, quantity.add(other.quantity), changes);
        }
    }

    public SparesTrade() {
        super(
                "spares",
                Room.BENCH,
                "List the parts of each kit that are replaced in service, with intervals, quantities and suppliers.",
                "For no order of these is there a kit to list spares of.",
                List.of(SparesFinding.values()),
                List.of(MONTHS, KM));
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, Given options) {
        return Outcome.sound(kits.stream().map(kit -> work(kit, options)).toList());
    }

    private static TradeResult work(KitInWork kit, Given options) {
        List<Spare> spares = spares(kit, options);
        if (spares.isEmpty()) {
            Finding nothing = Finding.of(
                    KitFinding.NOT_JUDGED, "spares", "trade", "Service spares", "file", "'service' in parts/*.json");
            return new TradeResult(kit.order().name(), Findings.of(nothing), List.of());
        }
        Findings findings = findings(kit.bill());
        return TradeResult.of(kit, findings, () -> report(spares, findings, kit));
    }

    /** By sub-system in the workshop's printing order, what is due soonest first. */
    private static List<Spare> spares(KitInWork kit, Given options) {
        Map<List<Object>, Spare> sums = new LinkedHashMap<>();
        kit.bill().all().forEach(item -> {
            Service service = item.part().service();
            if (service != null) {
                String subSystem = item.position().subSystem();
                Integer changes = changes(service, options);
                Spare spare = new Spare(subSystem, item.part(), service, item.quantity(), changes);
                sums.merge(List.of(subSystem, item.part().number()), spare, Spare::and);
            }
        });
        Comparator<Spare> printed =
                Comparator.comparing(spare -> kit.workshop().subSystems().indexOf(spare.subSystem()));
        Comparator<Integer> lastIfNull = Comparator.nullsLast(Comparator.naturalOrder());
        return sums.values().stream()
                .sorted(printed.thenComparing(spare -> spare.service().everyMonths(), lastIfNull)
                        .thenComparing(spare -> spare.service().everyKm(), lastIfNull)
                        .thenComparing(spare -> spare.part().number()))
                .toList();
    }

    /**
     * Whole intervals within the span. Driven evenly, a part is due every min(months, km) of its two, so the larger of the
     * two counts is the number.
     */
    private static @Nullable Integer changes(Service service, Given options) {
        return options.has(MONTHS) || options.has(KM)
                ? Math.max(
                        times(options.get(MONTHS).orElse(0), service.everyMonths()),
                        times(options.get(KM).orElse(0), service.everyKm()))
                : null;
    }

    private static int times(int span, @Nullable Integer every) {
        return every == null ? 0 : span / every;
    }

    private static Findings findings(Bill bill) {
        Stream<Finding> own = bill.all()
                .map(Item::part)
                .flatMap(part -> Stream.ofNullable(part.service()).flatMap(service -> findings(part, service)));
        Stream<Finding> within = bill.all()
                .filter(item -> item.part().structure().joined() == Joined.WELDED)
                .flatMap(SparesTrade::weldedIn);
        return Stream.concat(own, within).collect(Findings.collected());
    }

    private static Stream<Finding> findings(Part part, Service service) {
        List<Finding> found = new ArrayList<>();
        if (part.source() == Source.BUY && part.buying() == null && part.bin().isEmpty()) {
            found.add(finding(SparesFinding.SPARE_FROM_NOWHERE, part, Map.of()));
        }
        Integer months = service.everyMonths();
        if (months != null && part.leadDays() > months * MONTH_DAYS) {
            found.add(finding(SparesFinding.SPARE_TOO_SLOW, part, Map.of("days", part.leadDays(), "months", months)));
        }
        return found.stream();
    }

    private static Stream<Finding> weldedIn(Item assembly) {
        return assembly.inside().stream()
                .flatMap(Item::all)
                .map(Item::part)
                .filter(part -> part.service() != null)
                .map(part -> finding(
                        SparesFinding.SPARE_WELDED_IN,
                        part,
                        Map.of("assembly", assembly.part().number())));
    }

    private static Finding finding(SparesFinding kind, Part part, Map<String, Object> more) {
        Map<String, Object> data = new TreeMap<>(more);
        data.put("part", part.number());
        data.put("name", part.name());
        return new Finding(kind, part.number().text(), data);
    }

    private static Report report(List<Spare> spares, Findings findings, KitInWork kit) {
        Order order = kit.order();
        ReportBuilder report = Report.named("service-spares", "Service spares")
                .about("Order " + order.name())
                .by(kit.workshop().name())
                .in(kit.words(SparesTrade.class))
                .found(kit.answered(findings))
                .glance(new Heading(order.name() + ", " + kit.says(kit.family().says()), Look.TITLE))
                .glance(known(spares).of(spares).build());
        if (order.placed() != null) {
            report.dated(order.placed());
        }
        return report.page(page(spares, findings, kit)).build();
    }

    private static PageBuilder page(List<Spare> spares, Findings findings, KitInWork kit) {
        Order order = kit.order();
        PageBuilder page = Page.named("Service spares").landscape().footer("Service spares, order " + order.name());
        page.title("Service spares")
                .add(Particulars.named("spares-head")
                        .say(
                                "workshop",
                                "Workshop",
                                kit.workshop().name() + ", " + kit.workshop().place())
                        .say("order", "Order", order.name() + ", " + order.customer())
                        .say("vehicle", "Base vehicle", kit.says(kit.family().says())));
        TableSpec<Spare> spec = listed(spares);
        TableBuilder table = spec.empty();
        String subSystem = "";
        for (Spare spare : spares) {
            if (!spare.subSystem().equals(subSystem)) {
                subSystem = spare.subSystem();
                table.group(
                        subSystem,
                        kit.catalogue().subSystemSays(subSystem, kit.workshop().language()));
            }
            spec.add(table, "", spare);
        }
        page.add(table).note(COUNTED);
        Superseded.add(page, kit);
        FindingsTable.add(page, kit.answered(findings), kit.workshop().language());
        CautionNotes.always(
                page, "service-spares", kit.workshop(), kit.workshop().language());
        return page;
    }

    /** What a terminal has room for; numbers of changes only where a span is asked for. */
    private static TableSpec<Spare> known(List<Spare> spares) {
        TableSpec<Spare> known = TableSpec.<Spare>named("spares")
                .text("part", "Part", spare -> spare.part().number().text())
                .said("name", "Name", 30, spare -> spare.part().name())
                .whole("interval", "Every", "months", spare -> spare.service().everyMonths())
                .whole("km", "or every", "km", spare -> spare.service().everyKm())
                .quantity("quantity", "In the kit", "", Spare::quantity)
                .text("unit", "Unit", spare -> spare.part().unit());
        return spares.stream().allMatch(spare -> spare.changes() == null)
                ? known
                : known.whole("changes", "Changes", "", Spare::changes).quantity("needed", "Needed", "", Spare::needed);
    }

    private static TableSpec<Spare> listed(List<Spare> spares) {
        return known(spares)
                .text("bin", "Bin", spare -> spare.part().bin())
                .text("supplier", "Supplier", 20, spare -> spare.bought(Buying::supplier))
                .text("code", "Supplier part no.", spare -> spare.bought(Buying::orderCode))
                .said("why", "Why", 36, spare -> spare.service().why())
                .box(Column.blank("done", "Replaced: day, km"))
                .besideThePaper()
                .whole("lead", "Lead time", "days", spare -> spare.part().leadDays());
    }

    private static TradeOption<Integer> span(String name, String label, String says, int most) {
        return TradeOption.of(name, label, says, text -> read(name, text, most));
    }

    private static Outcome<Integer> read(String name, String text, int most) {
        boolean whole = text.strip().matches("[0-9]{1,7}");
        int span = whole ? Integer.parseInt(text.strip()) : 0;
        return span >= 1 && span <= most
                ? Outcome.sound(span)
                : Outcome.faulty(Fault.of(name, "'" + text + "'", "a whole number from 1 to " + most, ""));
    }
}
