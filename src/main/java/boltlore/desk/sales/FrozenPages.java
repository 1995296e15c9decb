package boltlore.desk.sales;

import boltlore.asking.KitFigures;
import boltlore.book.Offer;
import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.QuotedVersion;
import boltlore.book.orders.DraftDesk.Draft;
import boltlore.book.orders.LeftOfOrder;
import boltlore.catalogue.Option;
import boltlore.choices.Choice;
import boltlore.choosing.ConflictWords;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Told;
import boltlore.desk.frame.Workshop;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** An order that is not open any more, as it was frozen or given up. */
public final class FrozenPages {

    private final Workshop workshop;

    FrozenPages(Workshop workshop) {
        this.workshop = workshop;
    }

    /**
     * What stands on the page.
     *
     * @param left what was bought and made for an order that was cancelled; null of any other
     */
    public record Page(
            List<String> told,
            String number,
            List<Card.Fact> facts,
            List<Card.Settled> settled,
            List<Card.Version> versions,
            boolean owed,
            @Nullable LeftOfOrder left) {}

    Answer.Shown page(Call call, Draft draft) {
        OrderStanding standing = draft.standing();
        ConflictWords words = new ConflictWords(draft.order().choices().family());
        List<Card.Settled> settled = new ArrayList<>();
        for (Option option : draft.order().choices().family().options()) {
            Optional<String> value = draft.order().choices().value(option.name());
            value.ifPresent(chosen -> settled.add(
                    new Card.Settled(option.asks(), words.says(new Choice(option.name(), chosen)) + ".", "")));
        }
        List<Card.Version> versions =
                workshop.book().read(reading -> reading.orders().quotations(standing.name())).stream()
                        .map(each -> version(each, draft))
                        .toList();
        List<String> told = workshop.book().read(reading -> Told.of(reading, call));
        return Answer.page(
                standing.name(),
                "sales/frozen.jte",
                new Page(
                        told,
                        standing.name(),
                        facts(draft),
                        settled,
                        versions,
                        standing.state().owed(),
                        standing.state() == OrderState.CANCELLED
                                ? workshop.book().read(reading -> LeftOfOrder.of(reading, standing.name()))
                                : null));
    }

    private static List<Card.Fact> facts(Draft draft) {
        OrderStanding standing = draft.standing();
        List<Card.Fact> facts = new ArrayList<>(List.of(
                new Card.Fact("Customer", draft.customer()),
                new Card.Fact("Kit", draft.order().choices().family().says().english()),
                new Card.Fact("State", standing.state().written())));
        if (standing.confirmed() > 0) {
            facts.add(new Card.Fact("Confirmed", "version " + standing.confirmed()));
        }
        if (!standing.due().isEmpty()) {
            facts.add(new Card.Fact("Due", standing.due()));
        }
        return facts;
    }

    /** A version, and whether the draft has gone on since. */
    static Card.Version version(QuotedVersion quoted, Draft draft) {
        Offer offer = quoted.offer();
        Currency currency = Currency.getInstance(offer.currency());
        return new Card.Version(
                quoted.version(),
                offer.on().toString(),
                offer.validUntil().toString(),
                KitFigures.money(currency, offer.net()),
                KitFigures.money(currency, offer.total()),
                offer.leadDays(),
                !quoted.stands().order().equals(draft.seen()));
    }
}
