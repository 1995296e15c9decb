package boltlore.trades.coating;

import boltlore.catalogue.Booth;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Powder;
import boltlore.measure.Digits;
import boltlore.measure.Money;
import boltlore.order.Order;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.coating.PowderUse.Overspray;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** For the booth: which powder after which, how much of it, and what becomes of overspray. */
final class PowdersPage {

    private final CoatJob job;
    private final CoatPlan plan;
    private final Currency currency;

    private PowdersPage(CoatJob job) {
        this.job = job;
        this.plan = job.plan();
        this.currency = job.workshop().currency();
    }

    static PageBuilder compose(CoatJob job, String footer) {
        PowdersPage powders = new PowdersPage(job);
        PageBuilder page = Page.named("Powders").footer(footer).title("Spray sequence");
        CautionNotes.always(
                page, "coating-booth", job.workshop(), job.workshop().language());
        page.note(powders.sequence()).add(powders.rounds()).add(powders.runs());
        return page.heading("Powder to issue, and overspray")
                .note(powders.rule())
                .add(powders.use());
    }

    private String sequence() {
        String booths = job.shop().booths().stream()
                .map(booth ->
                        booth.says() + (booth.holdsPowder().isEmpty() ? " is empty" : " holds " + booth.holdsPowder()))
                .collect(Collectors.joining("; "));
        return booths + ". " + CoatWords.count(plan.changeOvers(), "colour change", "colour changes")
                + costOfChanges(job)
                + " for " + CoatWords.count(plan.runs().size(), "run", "runs")
                + " of one powder each, from light to dark where that is cheaper. A coat is cured before the next is"
                + " sprayed on it.";
    }

    /** ' (90 min, 35.20 EUR)', or empty where changes cost nothing. */
    static String costOfChanges(CoatJob job) {
        BigDecimal cost = cost(job);
        long minutes = minutes(job.plan());
        return minutes == 0 && cost.signum() == 0
                ? ""
                : " (" + minutes + " min, " + cost.toPlainString() + " "
                        + job.workshop().currency().getCurrencyCode() + ")";
    }

    private static long minutes(CoatPlan plan) {
        return CoatSheet.changes(plan)
                .mapToLong(change -> change.work().minutes())
                .sum();
    }

    /** Of all colour changes, each rounded as it is shown. */
    private static BigDecimal cost(CoatJob job) {
        Currency currency = job.workshop().currency();
        return CoatSheet.changes(job.plan())
                .map(change -> Money.rounded(change.cost(), currency))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** What is needed within the same days, once through the colours. */
    private TableBuilder rounds() {
        return TableSpec.<Round>named("rounds")
                .text("round", "Round", round -> String.valueOf(round.number()))
                .text("orders", "Orders", 50, this::orders)
                .whole("loads", "Oven loads", "", round -> round.loads().count())
                .whole("least", "Loads needed, at least", "", Round::leastLoads)
                .text(
                        "order-of-powders",
                        "Order of powders",
                        round -> round.shortest()
                                ? "no other costs less to change"
                                : "the best known; another may cost less")
                .of(plan.rounds());
    }

    /** '14 orders needed from 2026-06-01 to 2026-06-12'. */
    private String orders(Round round) {
        List<LocalDate> needs = round.orders().stream()
                .map((Order order) -> CoatPlanner.needBy(order, job.workshop().assemblyDays()))
                .filter(Objects::nonNull)
                .sorted()
                .toList();
        String orders = CoatWords.count(round.orders().size(), "order", "orders");
        if (needs.isEmpty()) {
            return orders + " without a date";
        }
        LocalDate first = needs.get(0);
        LocalDate last = needs.get(needs.size() - 1);
        return orders + " needed " + (first.equals(last) ? "on " + first : "from " + first + " to " + last);
    }

    private TableBuilder runs() {
        TableBuilder table = inRounds(TableSpec.<PowderRun>named("powder-runs")
                .text("run", "Run", run -> String.valueOf(run.number()))
                .text("powder", "Powder", PowderRun::powder)
                .text("clean-down", "Colour change", 18, run -> change(run.changeOver()))
                .whole(
                        "minutes",
                        "Cleaning",
                        "min",
                        run -> compose(run.changeOver(), change -> change.work().minutes()))
                .money(
                        "cost",
                        "Cost of change",
                        currency,
                        run -> compose(run.changeOver(), change -> Money.rounded(change.cost(), currency)))
                .text(
                        "passes",
                        "For",
                        28,
                        run -> run.passes().stream().map(Pass::says).collect(Collectors.joining(", ")))
                .whole("pieces", "Pieces", "", PowderRun::pieces)
                .whole("loads", "Oven loads", "", run -> run.loads().count())
                .box(Column.tick("cleaned", "Booth clean"))
                .box(Column.tick("sprayed", "Sprayed"))
                .besideThePaper()
                .text("says", "Kind", 28, run -> compose(run, Powder::says))
                .decimal("lightness", "Lightness L*", "", 0, run -> compose(run, Powder::lightness)));
        total(table);
        return table;
    }

    private void total(TableBuilder table) {
        table.total("total", "All runs")
                .sum("minutes", BigDecimal.valueOf(minutes(plan)))
                .sum("cost", cost(job))
                .sum(
                        "pieces",
                        BigDecimal.valueOf(plan.runs().stream()
                                .mapToLong(PowderRun::pieces)
                                .sum()))
                .sum("loads", BigDecimal.valueOf(plan.loads().count()));
    }

    private TableBuilder use() {
        TableBuilder table = inRounds(TableSpec.<PowderRun>named("powder-use")
                .text("run", "Run", run -> String.valueOf(run.number()))
                .text("powder", "Powder", PowderRun::powder)
                .decimal("film", "Powder on parts", "kg", 3, run -> use(run).filmKg())
                .decimal("waste", "Needed if sprayed to waste", "kg", 3, run -> use(run).wasteKg())
                .decimal("gathered", "Needed if reclaimed", "kg", 3, run -> ifWeighed(run, PowderUse::gatheredKg))
                .money(
                        "saved",
                        "Powder saved",
                        currency,
                        run -> ifWeighed(run, use -> Money.rounded(use.saved(), currency)))
                .money(
                        "cleaning",
                        "Cleaning after",
                        currency,
                        run -> ifWeighed(run, use -> Money.rounded(use.cleaning(), currency)))
                .text("overspray", "Overspray", 12, run -> reclaimed(use(run)) ? "reclaim" : "to waste")
                .decimal("issue", "Powder to issue", "kg", 3, run -> use(run).issueKg())
                .box(Column.tick("issued", "Issued"))
                .besideThePaper()
                .text("decision", "Why", 30, run -> overspray(use(run), run, job.shop()))
                .text("code", "Code of the run", CoatCodes::run));
        table.total("total", "All powder").sum("film", sum(PowderUse::filmKg)).sum("issue", sum(PowderUse::issueKg));
        return table;
    }

    /** Run by run, with a heading for each round where there are several. */
    private TableBuilder inRounds(TableSpec<PowderRun> spec) {
        TableBuilder table = spec.empty();
        for (Round round : plan.rounds()) {
            if (plan.rounds().size() > 1) {
                table.group("round-" + round.number(), "Round " + round.number() + ": " + orders(round));
            }
            round.runs().forEach(run -> spec.add(table, "", run));
        }
        return table;
    }

    private static boolean reclaimed(PowderUse use) {
        return use.overspray() == Overspray.GATHERED;
    }

    private PowderUse use(PowderRun run) {
        return PowderUse.of(run, job.workshop());
    }

    /** Only where reclaiming was weighed up at all. */
    private @Nullable BigDecimal ifWeighed(PowderRun run, Function<PowderUse, BigDecimal> figure) {
        PowderUse use = use(run);
        boolean weighed = use.overspray() == Overspray.GATHERED || use.overspray() == Overspray.WASTE;
        return weighed ? figure.apply(use) : null;
    }

    private BigDecimal sum(Function<PowderUse, BigDecimal> kg) {
        return plan.runs().stream().map(run -> kg.apply(use(run))).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private <T> @Nullable T compose(PowderRun run, Function<Powder, @Nullable T> value) {
        return compose(job.shop().powders().get(run.powder()), value);
    }

    private static <S, T> @Nullable T compose(@Nullable S of, Function<S, @Nullable T> value) {
        return of == null ? null : value.apply(of);
    }

    private static String change(@Nullable ChangeOver change) {
        return change == null ? "none, in the booth" : change.toDarker() ? "light to dark" : "full clean";
    }

    /** How the booth is cleaned before a run: from what, how carefully, how long and for how much. */
    static String cleanDown(PowderRun run, CoatJob job) {
        ChangeOver change = run.changeOver();
        String from = change == null || change.from().isEmpty() ? "" : ", from " + change.from();
        if (change == null || change.work().minutes() == 0) {
            return change(change) + from;
        }
        Currency currency = job.workshop().currency();
        return change(change) + from + ": " + change.work().minutes() + " min by "
                + CoatWords.count(change.work().people(), "person", "people") + ", "
                + Digits.plain(change.work().powderKg()) + " kg lost, "
                + Money.rounded(change.cost(), currency).toPlainString() + " " + currency.getCurrencyCode();
    }

    private String rule() {
        boolean reclaims =
                job.shop().booths().stream().map(Booth::reclaimPercent).anyMatch(Objects::nonNull);
        return reclaims
                ? "Overspray is reclaimed and sprayed again where the powder saved is worth more than cleaning filters,"
                        + " cyclone and sieve after it; else it goes to waste. Sieve what is reclaimed, and mix it with"
                        + " fresh powder as its data sheet allows."
                : "No booth reclaims overspray: all of it goes to waste.";
    }

    /** What becomes of the powder that misses the parts, and why. */
    static String overspray(PowderUse use, PowderRun run, CoatingShop shop) {
        return switch (use.overspray()) {
            case GATHERED -> "reclaim and spray again: it saves more than the cleaning costs";
            case WASTE -> "to waste: what it saves is not worth the cleaning";
            case NEVER -> {
                Powder powder = shop.powders().get(run.powder());
                yield "to waste: never reclaimed, " + (powder == null ? "" : powder.neverReclaimed());
            }
            case NO_GATHERING -> "to waste: the booth reclaims none";
        };
    }
}
