package boltlore.desk.sales;

import boltlore.asking.PapersLanguage;
import boltlore.book.OrderStanding;
import boltlore.book.QuotedVersion;
import boltlore.book.db.Written;
import boltlore.book.orders.DraftDesk;
import boltlore.book.orders.DraftDesk.Draft;
import boltlore.book.orders.HoldPoint;
import boltlore.book.orders.HoldPoints;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.choosing.ChoiceState;
import boltlore.choosing.ConflictWords;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Sentences;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.OptionName;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The pages and forms of one order while its choices are open. */
final class OrderPages {

    private static final String AT = SalesRoom.ORDER + "{order}";

    private static final Pattern NUMBERED = Pattern.compile("(.*?)(\\d{1,9})");

    private final Workshop workshop;
    private final Choosings choosings;
    private final Ahead ahead;
    private final FrozenPages frozen;
    private final QuotePages quoting;

    OrderPages(Workshop workshop) {
        this.workshop = workshop;
        this.choosings = new Choosings(workshop.bench());
        this.ahead = new Ahead(choosings);
        this.frozen = new FrozenPages(workshop);
        this.quoting = new QuotePages(workshop, choosings, this);
    }

    void open(Doors doors) {
        doors.look(AT, call -> page(call, call.path("order")));
        doors.look(AT + "/opening", this::opening);
        new HeadPages(workshop).open(doors);
        doors.act(AT + "/answer", call -> act(call, this::answered));
        doors.act(AT + "/answers", call -> act(call, this::answeredTogether));
        doors.act(AT + "/take", call -> act(call, this::taken));
        doors.act(AT + "/wants", call -> act(call, this::wantsSaid));
        doors.act(AT + "/back", this::back);
        doors.act(AT + "/copy", this::copy);
        doors.act(AT + "/quote", quoting::quote);
        doors.act(AT + "/as-quoted", call -> act(call, quoting::asQuoted));
        doors.act(AT + "/leave", call -> act(call, this::left));
        new ConfirmPages(workshop).open(doors);
    }

    private Outcome<Draft> draft(String order) {
        return draft(workshop, order);
    }

    static Outcome<Draft> draft(Workshop workshop, String order) {
        return workshop.book().read(reading -> DraftDesk.draft(reading, workshop.bench(), order));
    }

    static Answer missing(Outcome<?> outcome) {
        return new Answer.Missing(Sentences.missing(outcome.faults()));
    }

    /** The card of an order that is open, or what was frozen. */
    private Answer page(Call call, String order) {
        Outcome<Draft> found = draft(order);
        if (!(found instanceof Outcome.Sound<Draft> sound)) {
            return missing(found);
        }
        return sound.value().standing().state().open() ? card(call, sound.value()) : frozen.page(call, sound.value());
    }

    private Answer.Shown card(Call call, Draft draft) {
        Order order = draft.order();
        List<QuotedVersion> quoted =
                workshop.book().read(reading -> reading.orders().quotations(order.name()));
        List<Card.Version> versions =
                quoted.stream().map(each -> FrozenPages.version(each, draft)).toList();
        List<String> holds = quoted.isEmpty() ? List.of() : holds(quoted.get(quoted.size() - 1));
        Answer.Shown shown = choosings.with(order, call.today(), choosing -> {
            ChoiceState state = choosing.chooser().standing(order.choices());
            if (state instanceof ChoiceState.Sound standing) {
                Card card = new CardMaker(draft, choosing, standing).card(call.said("ask"));
                return Answer.page(order.name(), "sales/card.jte", card.with(versions, holds));
            }
            return ContradictedPage.of(draft, choosing, versions);
        });
        ahead.look(draft, call.today(), shown);
        return shown;
    }

    private static String sentence(String found) {
        return Character.toUpperCase(found.charAt(0)) + found.substring(1) + (found.endsWith(".") ? "" : ".");
    }

    private List<String> holds(QuotedVersion last) {
        return workshop.book().read(reading -> HoldPoints.beforeConfirming(reading, last)).stream()
                .map(HoldPoint::found)
                .map(OrderPages::sentence)
                .toList();
    }

    /** What a form changes of the draft that it was made from. */
    private Answer act(Call call, BiFunction<Call, Draft, Outcome<Order>> change) {
        return draft(call.path("order")) instanceof Outcome.Sound<Draft> found
                ? changed(call, change.apply(call, found.value()))
                : missing(draft(call.path("order")));
    }

    private Answer changed(Call call, Outcome<Order> changed) {
        return finished(
                call,
                changed.then(order -> new DraftDesk(workshop.book(), call.by()).change(call.said("seen"), order)));
    }

    Answer finished(Call call, Outcome<?> done) {
        String order = call.path("order");
        if (done.faults().isEmpty()) {
            return new Answer.Done(SalesRoom.ORDER + order);
        }
        Answer page = page(call, order);
        return page instanceof Answer.Shown shown ? shown.refused(done.faults()) : page;
    }

    private Outcome<Order> answered(Call call, Draft draft) {
        return choice(draft.order(), call.said("option"), call.said("value"))
                .then(choice -> with(call, draft, List.of(choice)));
    }

    /** Of a question with several answers each one that was shown: given where it is ticked, and else not. */
    private Outcome<Order> answeredTogether(Call call, Draft draft) {
        List<String> ticked = call.all("with");
        return Outcome.all(call.all("member").stream()
                        .map(member -> choice(draft.order(), member, ticked.contains(member) ? Option.YES : Option.NO))
                        .toList())
                .then(choices -> with(call, draft, choices));
    }

    /** A repair: what is wanted, and what has to change for it. */
    private Outcome<Order> taken(Call call, Draft draft) {
        return Outcome.all(call.all("change").stream()
                        .map(change -> {
                            int equals = change.indexOf('=');
                            return choice(
                                    draft.order(),
                                    change.substring(0, Math.max(0, equals)),
                                    change.substring(equals + 1));
                        })
                        .toList())
                .then(choices -> with(call, draft, choices));
    }

    private static Outcome<Choice> choice(Order order, String option, String value) {
        Optional<Option> found = order.choices().family().options().stream()
                .filter(each -> each.name().text().equals(option))
                .findFirst();
        Optional<OptionValue> known = found.flatMap(each -> each.value(value));
        return known.isPresent()
                ? Outcome.sound(new Choice(found.orElseThrow().name(), value))
                : Outcome.faulty(Fault.of("", "no answer to a question of this kit", "one of the answers", ""));
    }

    /** What is chosen otherwise is no longer what a date has settled. */
    private Outcome<Order> with(Call call, Draft draft, List<Choice> choices) {
        Order order = draft.order();
        Choices with = order.choices();
        TreeSet<OptionName> byDate = new TreeSet<>(order.settledByDate());
        for (Choice choice : choices) {
            with = with.with(choice.option(), choice.value());
            byDate.remove(choice.option());
        }
        Choices after = with;
        return choosings.with(order, call.today(), choosing -> {
            ConflictWords words = new ConflictWords(order.choices().family());
            if (!(choosing.chooser().standing(after) instanceof ChoiceState.Sound sound)) {
                String why = words.contradiction(choosing.chooser().conflict(after, CardMaker.importance(draft)));
                return Outcome.faulty(Fault.of("", why, "", ""));
            }
            Choices forced = choosing.chooser().standing(order.choices()) instanceof ChoiceState.Sound before
                    ? before.withForced()
                    : order.choices();
            Order changed =
                    new OrderBuilder(order).choices(after).settledByDate(byDate).build();
            return Outcome.sound(
                    new PapersLanguage(workshop.bench().catalogue()).following(forced, sound.withForced(), changed));
        });
    }

    private Answer opening(Call call) {
        Outcome<Draft> found = draft(call.path("order"));
        return found instanceof Outcome.Sound<Draft> sound
                ? choice(sound.value().order(), call.said("option"), call.said("value"))
                                instanceof Outcome.Sound<Choice> wanted
                        ? choosings.with(
                                sound.value().order(),
                                call.today(),
                                choosing -> OpeningPage.of(sound.value(), choosing, wanted.value()))
                        : new Answer.Missing("There is no such answer.")
                : missing(found);
    }

    private Outcome<Order> wantsSaid(Call call, Draft draft) {
        return new HeadForm(workshop.bench().catalogue()).said(call, draft.order());
    }

    private Answer back(Call call) {
        return finished(
                call,
                new DraftDesk(workshop.book(), call.by())
                        .back(call.path("order"), call.said("seen"), workshop.bench()));
    }

    /** An answer is taken off, so that its question is open again; the others may still contradict each other. */
    private Outcome<Order> left(Call call, Draft draft) {
        Order order = draft.order();
        OptionName option = new OptionName(call.said("option"));
        if (order.choices().value(option).isEmpty()) {
            return Outcome.faulty(Fault.of("", "no answer to that question", "one that was given", ""));
        }
        TreeSet<OptionName> byDate = new TreeSet<>(order.settledByDate());
        byDate.remove(option);
        return Outcome.sound(new OrderBuilder(order)
                .choices(order.choices().without(option))
                .settledByDate(byDate)
                .build());
    }

    /** Another order that says the same, to go on from; the two can be compared. */
    private Answer copy(Call call) {
        Outcome<Draft> found = draft(call.path("order"));
        if (!(found instanceof Outcome.Sound<Draft> sound)) {
            return missing(found);
        }
        String number = nextNumber(workshop);
        Order copied = new OrderBuilder(sound.value().order())
                .name(number)
                .customer(sound.value().customer())
                .waived(List.of())
                .build();
        Outcome<Written<OrderStanding>> begun = new DraftDesk(workshop.book(), call.by()).begin(copied);
        return begun.faults().isEmpty() ? new Answer.Done(SalesRoom.ORDER + number) : finished(call, begun);
    }

    /** One more than the highest, where orders are counted; else empty. */
    static String nextNumber(Workshop workshop) {
        Matcher last = NUMBERED.matcher(
                workshop.book().read(reading -> reading.orders().highest()));
        if (!last.matches()) {
            return "";
        }
        String digits = String.valueOf(Integer.parseInt(last.group(2)) + 1);
        int zeros = Math.max(0, last.group(2).length() - digits.length());
        return last.group(1) + "0".repeat(zeros) + digits;
    }
}
