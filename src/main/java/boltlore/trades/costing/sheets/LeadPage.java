package boltlore.trades.costing.sheets;

import boltlore.catalogue.Part;
import boltlore.measure.PartNumber;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.path.LeadPath;
import boltlore.trades.costing.path.Slot;
import boltlore.trades.costing.path.Step;
import boltlore.trades.costing.quote.Calculation;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What sets the lead time, what comes next, and what to order first. */
final class LeadPage {

    private static final int MOST = 12;

    private final LeadPath path;
    private final @Nullable LocalDate due;
    private final String language;

    private LeadPage(Calculation calculation) {
        CostedBill costed = calculation.cost().costed();
        this.path = costed.times().path();
        this.due = costed.bill().order().due();
        this.language = costed.catalogue().workshop().language();
    }

    static PageBuilder compose(Calculation calculation, String footer) {
        return new LeadPage(calculation).page(footer);
    }

    private PageBuilder page(String footer) {
        PageBuilder page = Page.named("Lead time").footer(footer).title("Critical path of the kit");
        page.note(says(path, language));
        TableSpec<Slot<Step>> chain = steps("critical-path").whole("saving", "Saving if halved", "days", this::gain);
        page.heading("Critical path").add(chain.of(path.chain()));
        List<Slot<Step>> first = path.first(MOST);
        page.heading("Order or release these first").add(slack("order-first").of(first));
        page.heading("Near-critical, beyond these").add(slack("near-critical").of(beyond(first)));
        return page.note(
                "Days are calendar days; day 0 is the day on which the first step may start. Dates are counted back from the day the kit is due"
                        + (due == null ? ", which is not given yet" : ", " + due)
                        + ". Slack is how late a step may be without moving the day of shipping. A part waits for all that it"
                        + " contains; a companion that a part brings must be there when that part is put into something, not when"
                        + " it is made. Nothing is taken from stock.");
    }

    /** What has little slack and does not stand in the table above. */
    private List<Slot<Step>> beyond(List<Slot<Step>> first) {
        return path.next(Integer.MAX_VALUE).stream()
                .filter(slot -> !first.contains(slot))
                .limit(MOST)
                .toList();
    }

    private TableSpec<Slot<Step>> slack(String name) {
        return steps(name).whole("slack", "Slack", "days", Slot::slack);
    }

    /** Dates as on the bill: a day, or days before the kit is due where no day is given. */
    private TableSpec<Slot<Step>> steps(String name) {
        TableSpec<Slot<Step>> spec = TableSpec.<Slot<Step>>named(name)
                .text("step", "Step", 34, slot -> slot.activity().what().what().says())
                .text(
                        "part",
                        "Part",
                        slot -> compose(slot, part -> part.number().text()))
                .said("name", "Name", 30, slot -> compose(slot, Part::name))
                .whole("duration", "Duration", "days", slot -> slot.activity().days());
        spec.whole("earliest-start", "Earliest start", "day", Slot::earliestStart)
                .whole("latest-start", "Latest start", "day", Slot::latestStart);
        LocalDate known = due;
        return known == null
                ? spec.whole("start", "Start before the kit is due", "days", this::before)
                : spec.date("start", "Start by", slot -> known.minusDays(before(slot)));
    }

    private int before(Slot<Step> slot) {
        return path.days() - slot.latestStart();
    }

    private static <T> @Nullable T compose(Slot<Step> slot, Function<Part, T> said) {
        Part part = slot.activity().what().part();
        return part == null ? null : said.apply(part);
    }

    private @Nullable Integer gain(Slot<Step> slot) {
        Step step = slot.activity().what();
        Part part = step.part();
        return part == null || step.what() == Step.What.COAT ? null : path.gainOfHalving(part.number());
    }

    /** 'The kit ships after 55 days: order and receive DU-90 (49 days); then …', and what would shorten it. */
    static String says(LeadPath path, String language) {
        return path.chain().stream()
                        .map(slot -> step(slot, language))
                        .collect(Collectors.joining("; then ", "The kit ships after " + path.days() + " days: ", ". "))
                + saving(path);
    }

    /** What halving a part on the chain would gain, the largest gain; or why it would gain nothing. */
    private static String saving(LeadPath path) {
        Map.Entry<PartNumber, Integer> best = path.gains().entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .orElse(null);
        if (best == null) {
            return "Nothing is ordered or made, so nothing but the workshop's own days could be shortened.";
        }
        return best.getValue() > 0
                ? "Half the duration of " + best.getKey() + " would save " + best.getValue() + " days."
                : "Half the duration of one part saves nothing: these have no slack either: " + tied(path) + ".";
    }

    private static String tied(LeadPath path) {
        return path.next(Integer.MAX_VALUE).stream()
                .filter(Slot::critical)
                .flatMap(slot -> Stream.ofNullable(slot.activity().what().part()))
                .map(part -> part.number().text())
                .collect(Collectors.joining(", "));
    }

    private static String step(Slot<Step> slot, String language) {
        Part part = slot.activity().what().part();
        String what = slot.activity().what().what().says().toLowerCase(Locale.ROOT);
        String of = part == null ? "" : " " + part.number() + " " + part.name().in(language);
        return what + of + ", " + slot.activity().days() + " days";
    }
}
