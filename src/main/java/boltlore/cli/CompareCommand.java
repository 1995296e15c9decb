package boltlore.cli;

import boltlore.answers.Comparison;
import boltlore.answers.OrderKit;
import boltlore.answers.json.ComparisonJson;
import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.explanation.FindingWords;
import boltlore.faults.Outcome;
import boltlore.measure.Digits;
import boltlore.measure.Money;
import boltlore.measure.PartNumber;
import boltlore.resolution.Finding;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.SortedSet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** What changes from one order to another. */
@Command(
        name = "compare",
        description = "Say what comes in, goes out and changes from one order's kit to another's, and what it costs.")
final class CompareCommand extends RoomCommand {

    @Parameters(index = "0", paramLabel = "ORDER", description = "The order to start from.")
    private Path before = Path.of("");

    @Parameters(index = "1", paramLabel = "OTHER", description = "The order to compare with it.")
    private Path after = Path.of("");

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Override
    int run(Screen screen) {
        Outcome<Bench> bench = Bench.of(catalogue);
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
            screen.line(ComparisonJson.of(
                            comparison, first.order().choices(), second.order().choices())
                    .written()
                    .stripTrailing());
        } else {
            print(screen, known, first, second, comparison);
        }
        return Outcome.sound(Exit.OK);
    }

    private static void print(Screen screen, Catalogue known, OrderKit first, OrderKit second, Comparison comparison) {
        screen.heading("From " + first.order().name() + " to " + second.order().name());
        comparison.changes().forEach((part, change) -> screen.wrapped(2, change(known, part, change)));
        if (comparison.changes().isEmpty()) {
            screen.wrapped(2, "The same parts in the same quantities.");
        }
        findings(screen, "no longer: ", first, comparison.findingsGone());
        findings(screen, "now: ", second, comparison.findingsNew());
        String currency = known.workshop().currency().getCurrencyCode();
        screen.wrapped(
                2,
                "cost of parts "
                        + signed(Money.rounded(
                                comparison.costDifference(), known.workshop().currency())) + " " + currency + ", mass "
                        + signed(comparison.massKgDifference()) + " kg");
    }

    private static String change(Catalogue known, PartNumber part, Comparison.Change change) {
        String named = part + " " + known.part(part).name().english();
        String unit = " " + known.part(part).unit();
        if (change.in()) {
            return "in   " + named + ": " + change.after().toPlainString() + unit;
        }
        return change.out()
                ? "out  " + named + ": " + change.before().toPlainString() + unit
                : "now  " + named + ": " + change.after().toPlainString() + " instead of "
                        + change.before().toPlainString() + unit;
    }

    private static void findings(Screen screen, String head, OrderKit kit, SortedSet<Finding> findings) {
        FindingWords words = new FindingWords(kit.order().choices().family());
        findings.forEach(finding -> screen.wrapped(2, head + words.of(finding)));
    }

    private static String signed(BigDecimal number) {
        return (number.signum() > 0 ? "+" : "") + Digits.plain(number);
    }
}
