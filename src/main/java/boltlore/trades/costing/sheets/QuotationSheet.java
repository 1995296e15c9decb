package boltlore.trades.costing.sheets;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.bill.Origin;
import boltlore.catalogue.Catalogue;
import boltlore.measure.LineName;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Phrases;
import boltlore.report.Report;
import boltlore.report.TableSpec;
import boltlore.trades.costing.quote.OptionPrices;
import boltlore.trades.costing.quote.Quotation;
import boltlore.trades.weighing.Weighing;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedSet;
import org.jspecify.annotations.Nullable;

/**
 * The quotation of one order, in the order's language. It is made of a quotation, which holds no cost, and of the bill
 * without prices, so that no cost can stand in it.
 */
public final class QuotationSheet {

    public static final String FILE = "quotation";

    private QuotationSheet() {}

    public static Report compose(Quotation quotation, Bill bill, Weighing weighing, Catalogue catalogue) {
        return compose(quotation, bill, weighing, catalogue, null);
    }

    /**
     * The same with the price of each option.
     *
     * @param options what each option makes of the price, or null where nobody can say
     */
    public static Report compose(
            Quotation quotation, Bill bill, Weighing weighing, Catalogue catalogue, @Nullable OptionPrices options) {
        Phrases phrases = phrases(bill.order().language());
        QuotedOrder quoted = new QuotedOrder(quotation, bill, catalogue, phrases, options);
        return Report.named(FILE, phrases.say("title"))
                .about(phrases.say("order") + " " + bill.order().name())
                .by(catalogue.workshop().name())
                .dated(quotation.on())
                .in(bill.order().language())
                .page(new OfferPage(quoted)
                        .page()
                        .also(includedPage(quoted))
                        .also(new TermsPage(quoted, weighing).page()))
                .build();
    }

    static Phrases phrases(String language) {
        return Phrases.of(QuotationSheet.class, FILE, language);
    }

    /** What is in the kit, by sub-system, in the words of its positions; brackets that carry nothing stand elsewhere. */
    private static PageBuilder includedPage(QuotedOrder quoted) {
        String included = quoted.phrases().say("included");
        Map<String, Set<String>> positions = positions(quoted);
        return Page.named(included)
                .print(quoted.print())
                .title(included)
                .add(TableSpec.<String>named("included")
                        .text(
                                "sub-system",
                                quoted.phrases().say("subSystem"),
                                28,
                                subSystem -> called(quoted, subSystem))
                        .text(
                                "what",
                                quoted.phrases().say("what"),
                                96,
                                subSystem -> String.join(
                                        quoted.phrases().say("and"), Objects.requireNonNull(positions.get(subSystem))))
                        .of(quoted.catalogue().workshop().subSystems().stream()
                                .filter(positions::containsKey)
                                .toList()));
    }

    private static String called(QuotedOrder quoted, String subSystem) {
        return quoted.prices()
                .map(book -> book.called(subSystem, quoted.language()))
                .orElse(subSystem);
    }

    private static Map<String, Set<String>> positions(QuotedOrder quoted) {
        SortedSet<LineName> unused = quoted.bill().resolved().kit().unused();
        Map<String, Set<String>> positions = new LinkedHashMap<>();
        for (Item item : quoted.bill().items()) {
            if (item.origin() instanceof Origin.OwnLine && !unused.contains(item.line())) {
                positions
                        .computeIfAbsent(item.position().subSystem(), any -> new LinkedHashSet<>())
                        .add(item.position().says().in(quoted.language()));
            }
        }
        return positions;
    }
}
