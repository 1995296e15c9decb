package boltlore.desk.sales;

import boltlore.book.orders.DraftDesk.Draft;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choice;
import boltlore.choosing.AnswerEffects;
import boltlore.choosing.AnswerEffects.Effect;
import boltlore.choosing.BestKit;
import boltlore.choosing.ChoiceState;
import boltlore.choosing.ConflictWords;
import boltlore.choosing.Importance;
import boltlore.desk.sales.Choosings.Choosing;
import boltlore.logic.Deadline;
import boltlore.measure.Digits;
import boltlore.order.Order;
import boltlore.trades.costing.MinorUnit;
import boltlore.trades.costing.quote.Quotation;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Makes the card of an open order: what is settled, what is asked next, and what each answer would change. */
final class CardMaker {

    private static final int MOST_ANSWERS = 60;
    private static final int MOST_NAMED = 3;

    private final Draft draft;
    private final Order order;
    private final Choosing choosing;
    private final ChoiceState.Sound standing;
    private final ConflictWords words;
    private final AnswerEffects effects;

    CardMaker(Draft draft, Choosing choosing, ChoiceState.Sound standing) {
        this.draft = draft;
        this.order = draft.order();
        this.choosing = choosing;
        this.standing = standing;
        this.words = new ConflictWords(family());
        this.effects = new AnswerEffects(choosing.chooser(), choosing.best(), choosing.known());
    }

    private Family family() {
        return order.choices().family();
    }

    /** What means most to the customer: what is fixed, what has a rank, and of the rest what was said last. */
    static Importance importance(Draft draft) {
        return Importance.of(draft.order()).thenNewest(draft.newest());
    }

    /** @param again the option that is asked again although it is settled, or empty */
    Card card(String again) {
        Option option = next(again).orElse(null);
        boolean whole = standing.questions().isEmpty();
        return new Card(
                order.name(),
                draft.seen(),
                draft.standing().state().written(),
                family().says().english(),
                facts(),
                settled(),
                option == null ? null : question(option),
                CardFoot.of(effects, standing, whole),
                whole ? CardWants.of(order, choosing, standing) : List.of(),
                List.of(),
                List.of(),
                !draft.earlier().isEmpty(),
                whole);
    }

    private Optional<Option> next(String again) {
        Optional<Option> asked = family().options().stream()
                .filter(option -> option.name().text().equals(again))
                .filter(option -> standing.forced(option).isEmpty())
                .findFirst();
        return asked.isPresent() ? asked : choosing.order().next(standing, standing.questions());
    }

    private List<Card.Fact> facts() {
        List<Card.Fact> facts = new ArrayList<>();
        facts.add(new Card.Fact("Customer", draft.customer()));
        facts.add(new Card.Fact("Kit", family().says().english()));
        add(facts, "Base vehicle built", order.donorBuilt());
        add(facts, "Chassis number", order.chassis().isEmpty() ? null : order.chassis());
        add(facts, "Partner", order.partner().isEmpty() ? null : order.partner());
        BigDecimal discount = order.terms().discountPercent();
        add(facts, "Discount", discount == null ? null : Digits.plain(discount) + " %");
        add(facts, "Due", order.due());
        facts.add(new Card.Fact(
                "Papers in", Locale.forLanguageTag(order.language()).getDisplayLanguage(Locale.ENGLISH)));
        facts.add(new Card.Fact("State", draft.standing().state().written()));
        return facts;
    }

    private static void add(List<Card.Fact> facts, String label, @Nullable Object says) {
        if (says != null) {
            facts.add(new Card.Fact(label, says.toString()));
        }
    }

    private List<Card.Settled> settled() {
        List<Card.Settled> all = new ArrayList<>();
        for (Option option : family().options()) {
            Optional<String> chosen = standing.choices().value(option.name());
            Optional<OptionValue> forced = standing.forced(option);
            if (chosen.isPresent()) {
                String byDate = order.settledByDate().contains(option.name()) ? ", from the date" : "";
                String says = words.says(new Choice(option.name(), chosen.get())) + byDate + ".";
                all.add(new Card.Settled(asks(option), says, option.name().text()));
            } else if (forced.isPresent()) {
                Choice left = new Choice(option.name(), forced.get().value());
                String why =
                        words.forced(left, choosing.chooser().whyForced(standing.choices(), left, importance(draft)));
                all.add(new Card.Settled(asks(option), why, ""));
            }
        }
        return all;
    }

    private static String asks(Option option) {
        Option.Group group = option.group();
        return group == null ? option.asks() : group.asks();
    }

    /** One of several answers of a group is a question of its own: with it, or without. */
    private Card.Question question(Option option) {
        ChoiceState.Sound open =
                choosing.chooser().standing(order.choices().without(option.name())) instanceof ChoiceState.Sound without
                        ? without
                        : standing;
        BestKit asItIs = asItIs(option, open);
        List<Card.Answer> answers = new ArrayList<>();
        List<Card.Closed> closed = new ArrayList<>();
        String currency = "";
        for (OptionValue value : option.values().stream().limit(MOST_ANSWERS).toList()) {
            Choice choice = new Choice(option.name(), value.value());
            if (open.isOpen(choice)) {
                Effect effect = effect(open, choice, asItIs);
                answers.add(answer(option, value, effect));
                currency = currency.isEmpty() ? currency(effect) : currency;
            } else {
                closed.add(new Card.Closed(
                        value.value(),
                        words.closed(choice, choosing.chooser().whyClosed(open.choices(), choice, importance(draft)))));
            }
        }
        return new Card.Question(option.name().text(), asks(option), currency, answers, closed, together(option));
    }

    /** All answers of a question that may have several, as far as each may still be given or left away. */
    private List<Card.Member> together(Option asked) {
        Option.Group group = asked.group();
        if (group == null) {
            return List.of();
        }
        List<Card.Member> members = new ArrayList<>();
        for (Option option : family().options()) {
            Option.Group own = option.group();
            Choice with = new Choice(option.name(), Option.YES);
            boolean open = standing.isOpen(with) && standing.isOpen(new Choice(option.name(), Option.NO));
            boolean given = order.choices().value(option.name()).isPresent();
            if (own != null && own.name().equals(group.name()) && (open || given)) {
                boolean chosen = order.choices().value(option.name()).equals(Optional.of(Option.YES));
                members.add(new Card.Member(
                        option.name().text(),
                        option.value(Option.YES).orElseThrow().says().english(),
                        chosen,
                        answer(option, option.value(Option.YES).orElseThrow(), effect(standing, with, null))));
            }
        }
        return members.size() < 2 ? List.of() : members;
    }

    /** The kit with the answer that was given, from which others differ; null where none was given, or no kit is had. */
    private @Nullable BestKit asItIs(Option option, ChoiceState.Sound open) {
        Optional<Choice> given = order.choices()
                .value(option.name())
                .map(value -> new Choice(option.name(), value))
                .filter(open::isOpen);
        return given.isEmpty() ? null : effect(open, given.get(), null).after();
    }

    /** What takes too long is left out; what an answer rules out is known without. */
    private Effect effect(ChoiceState.Sound open, Choice choice, @Nullable BestKit asItIs) {
        try {
            Effect effect = effects.of(open, choice);
            return asItIs == null ? effect : new Effect(asItIs, effect.after(), effect.closes());
        } catch (Deadline.Passed tooLate) {
            return new Effect(null, null, effects.closes(open, choice));
        }
    }

    private static String currency(Effect effect) {
        BestKit kit = effect.after();
        return kit == null
                ? ""
                : kit.pricing()
                        .quotation()
                        .map(Quotation::currency)
                        .map(Currency::getCurrencyCode)
                        .orElse("");
    }

    private Card.Answer answer(Option option, OptionValue value, Effect effect) {
        BestKit before = effect.before();
        BestKit after = effect.after();
        String kg = "";
        String days = "";
        if (before != null && after != null) {
            kg = signed(after.massKg().subtract(before.massKg()).setScale(1, RoundingMode.HALF_UP));
            days = signed(BigDecimal.valueOf(after.leadDays() - (long) before.leadDays()));
        }
        String price = effect.morePrice().map(more -> price(after, more)).orElse("");
        return new Card.Answer(
                value.value(),
                value.says().english(),
                value.value().equals(option.usual()),
                order.choices()
                        .value(option.name())
                        .filter(value.value()::equals)
                        .isPresent(),
                price,
                kg,
                days,
                after == null ? "each kit with it is stopped by a finding" : closes(effect.closes()));
    }

    private static String price(@Nullable BestKit kit, BigDecimal more) {
        int digits = kit == null
                ? 2
                : kit.pricing()
                        .quotation()
                        .map(quotation -> new MinorUnit(quotation.currency()).digits())
                        .orElse(2);
        return signed(more.setScale(digits, RoundingMode.HALF_UP));
    }

    /** '+635.00', '−12.5', '0'. */
    private static String signed(BigDecimal number) {
        String digits = String.format(Locale.ROOT, "%,." + number.scale() + "f", number.abs());
        return number.signum() == 0 ? digits : (number.signum() > 0 ? "+" : "\u2212") + digits;
    }

    private String closes(List<Choice> closed) {
        int more = closed.size() - MOST_NAMED;
        return closed.stream().limit(MOST_NAMED).map(words::says).collect(Collectors.joining(", "))
                + (more > 0 ? " and " + more + " more" : "");
    }
}
