package boltlore.desk.sheets;

import boltlore.answers.OrderKit;
import boltlore.book.OrderStanding;
import boltlore.book.orders.DraftDesk;
import boltlore.book.orders.FrozenKits;
import boltlore.choices.Choices;
import boltlore.choosing.ChoiceState;
import boltlore.choosing.Chooser;
import boltlore.desk.frame.Workshop;
import boltlore.explanation.FindingWords;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import boltlore.resolution.FamilyPlan;
import boltlore.trades.KitInWork;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/** Kits of orders of the book. */
public final class Kits {

    private final Workshop workshop;

    public Kits(Workshop workshop) {
        this.workshop = workshop;
    }

    /** The kit as it was frozen, or of an open order by the catalogue as it is now; faulty with all that stops it. */
    public Outcome<KitInWork> of(OrderStanding standing, LocalDate today) {
        return workshop.book()
                .read(reading -> standing.state().frozen()
                        ? FrozenKits.in(reading, workshop.bench(), today).then(kits -> kits.of(standing))
                        : DraftDesk.draft(reading, workshop.bench(), standing.name())
                                .then(draft -> open(draft, today)));
    }

    /** Of an order that is open, by the catalogue as it is now. */
    private Outcome<KitInWork> open(DraftDesk.Draft draft, LocalDate today) {
        Choices choices = draft.order().choices();
        Choices whole = new Chooser(choices.family()).standing(choices) instanceof ChoiceState.Sound sound
                ? sound.withForced()
                : choices;
        Order order = new OrderBuilder(draft.order())
                .choices(whole)
                .customer(draft.customer())
                .build();
        return OrderKit.of(workshop.bench().resolver(), order, false).then(kit -> {
            FamilyPlan plan = workshop.bench().resolver().resolver().plan(order.family());
            return kit.bill() == null || !kit.issuesSheets()
                    ? Outcome.faulty(stops(kit))
                    : Outcome.sound(new KitInWork(plan, kit.bill(), today));
        });
    }

    private static List<Fault> stops(OrderKit kit) {
        FindingWords words = new FindingWords(kit.order().choices().family());
        List<Fault> stops = Stream.concat(
                        words.of(kit.resolution().findings(), kit.resolution().choices()).all().stream(),
                        kit.misfits().all().stream())
                .filter(Finding::stops)
                .map(finding -> Fault.of("", finding.says(), "a kit that nothing stops", ""))
                .toList();
        return stops.isEmpty()
                ? List.of(Fault.of("", "questions that nobody has answered", "an order with all its answers", ""))
                : stops;
    }
}
