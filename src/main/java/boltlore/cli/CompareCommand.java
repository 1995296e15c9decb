package boltlore.cli;

import boltlore.answers.Comparison;
import boltlore.answers.OrderKit;
import boltlore.answers.json.ComparisonJson;
import boltlore.asking.FigureWords;
import boltlore.asking.KitFigures;
import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.explanation.FindingWords;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.measure.Wording;
import boltlore.resolution.Finding;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.Quotation;
import boltlore.trades.costing.quote.QuoteRequest;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Currency;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedSet;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What changes from one order to another. */
@Command(
        name = "compare",
        description =
                "Say what is added, removed and changed from one order's kit to another's, and how the price changes.")
final class CompareCommand extends RoomCommand {

    @Parameters(index = "0", paramLabel = "ORDER", description = "The order to start from.")
    private Path before = Path.of("");

    @Parameters(index = "1", paramLabel = "OTHER", description = "The order to compare with it.")
    private Path after = Path.of("");

    @Option(names = "--cost", description = "Tell the costs too: not for a screen that a customer sees.")
    private boolean cost;

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Override
    int run(Screen screen) {
        HeadStart.forKits();
        Outcome<CatalogueSession> bench = CatalogueSession.of(catalogue);
        return done(
                screen,
                bench.then(at -> at.kit(before, false)
                        .then(first ->
                                at.kit(after, false).then(second -> answer(screen, at.catalogue(), first, second)))));
    }

    private Outcome<Integer> answer(Screen screen, Catalogue known, OrderKit first, OrderKit second) {
        Bill one = first.bill();
        Bill other = second.bill();
        if (one == null || other == null) {
            if (one == null) {
                KitText.print(screen, first);
            }
            if (other == null) {
                KitText.print(screen, second);
            }
            return Outcome.sound(Exit.STOPPED);
        }
        Comparison comparison = Comparison.of(one, other);
        if (json()) {
            screen.line(withPrices(
                            ComparisonJson.encode(
                                    comparison,
                                    first.order().choices(),
                                    second.order().choices()),
                            pricing(known, first, one),
                            pricing(known, second, other))
                    .written()
                    .stripTrailing());
        } else {
            print(screen, known, first, second, comparison);
        }
        return Outcome.sound(Exit.OK);
    }

    private void print(Screen screen, Catalogue known, OrderKit first, OrderKit second, Comparison comparison) {
        screen.heading("From " + first.order().name() + " to " + second.order().name());
        comparison.changes().forEach((piece, change) -> screen.wrapped(2, change(known, piece, change)));
        if (comparison.changes().isEmpty()) {
            screen.wrapped(2, "The same parts in the same quantities and finishes.");
        }
        findings(screen, "finding removed: ", first, comparison.findingsGone());
        findings(screen, "finding added: ", second, comparison.findingsNew());
        OrderPricing before = pricing(known, first, first.bill());
        OrderPricing after = pricing(known, second, second.bill());
        screen.wrapped(
                2,
                price(before, after) + ", "
                        + FigureWords.mass(comparison.massKgDifference().setScale(1, RoundingMode.HALF_UP))
                        + (cost ? "; " + costs(before, after) : "") + ".");
    }

    /** 'direct cost of the kit EUR 120.00 more, full cost EUR 150.00 more'. */
    private static String costs(OrderPricing before, OrderPricing after) {
        Currency home = after.costed().currency();
        String direct = FigureWords.costs(home, direct(before, after));
        return "direct cost of the kit " + direct
                + full(before, after)
                        .map(full -> ", full cost " + FigureWords.costs(home, full))
                        .orElse("");
    }

    private static BigDecimal direct(OrderPricing before, OrderPricing after) {
        return after.costed().totals().cost().subtract(before.costed().totals().cost());
    }

    /** Of the kits without their extras, as the direct cost is. */
    private static Optional<BigDecimal> full(OrderPricing before, OrderPricing after) {
        return before.found()
                .flatMap(was -> after.found()
                        .map(is -> is.cost()
                                .kit()
                                .total()
                                .subtract(was.cost().kit().total())));
    }

    private static OrderPricing pricing(Catalogue known, OrderKit kit, @Nullable Bill bill) {
        return OrderPricing.of(
                Objects.requireNonNull(bill),
                known,
                QuoteRequest.usual(kit.order(), LocalDate.now(ZoneId.systemDefault())));
    }

    /** 'EUR 635.00 more (from EUR 39,985.00 to EUR 40,620.00 before tax), same lead time'. */
    private static String price(OrderPricing before, OrderPricing after) {
        String days = FigureWords.days(after.leadDays() - before.leadDays());
        Optional<Quotation> was = before.quotation();
        Optional<Quotation> is = after.quotation();
        if (was.isEmpty() || is.isEmpty()) {
            return KitFigures.noPrice(was.isEmpty() ? before : after).orElse("") + "; " + days;
        }
        String both =
                "from " + KitFigures.beforeTax(was.get()) + " to " + KitFigures.beforeTax(is.get()) + " before tax";
        boolean alike = was.get().currency().equals(is.get().currency());
        String more = alike
                ? FigureWords.difference(
                                is.get().currency(),
                                is.get().net().subtract(was.get().net())) + " (" + both + ")"
                : "price " + both;
        return more + ", " + days;
    }

    private JsonOut withPrices(JsonOut.Members comparison, OrderPricing before, OrderPricing after) {
        comparison.put("before", figures(before)).put("after", figures(after));
        return cost
                ? comparison
                        .put("costCurrency", after.costed().currency().getCurrencyCode())
                        .put("directCostDifference", direct(before, after))
                        .putIfAny("fullCostDifference", full(before, after).orElse(null))
                : comparison;
    }

    private static JsonOut figures(OrderPricing pricing) {
        JsonOut.Members figures = JsonOut.object().put("leadDays", pricing.leadDays());
        pricing.quotation()
                .ifPresent(quotation -> figures.put(
                                "currency", quotation.currency().getCurrencyCode())
                        .put("price", quotation.net()));
        return figures;
    }

    private static String change(Catalogue known, Comparison.Piece piece, Comparison.Change change) {
        String finish = piece.finish().isEmpty() ? "" : ", " + known.finishSays(piece.finish(), Wording.ENGLISH);
        Part part = known.part(piece.part());
        String named =
                piece.part() + " rev. " + piece.revision() + " " + part.name().english() + finish;
        String unit = " " + part.unit();
        if (change.added()) {
            return "added    " + named + ": " + change.after().toPlainString() + unit;
        }
        return change.removed()
                ? "removed  " + named + ": " + change.before().toPlainString() + unit
                : "changed  " + named + ": " + change.after().toPlainString() + " instead of "
                        + change.before().toPlainString() + unit;
    }

    private static void findings(Screen screen, String head, OrderKit kit, SortedSet<Finding> findings) {
        FindingWords words = new FindingWords(kit.order().choices().family());
        findings.forEach(finding -> screen.wrapped(2, head + words.of(finding)));
    }
}
