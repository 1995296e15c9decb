package boltlore.book.orders;

import boltlore.book.BuiltHappening;
import boltlore.book.BuiltHappening.Fitted;
import boltlore.book.BuiltHappening.Measured;
import boltlore.book.BuiltPart;
import boltlore.book.BuiltReading;
import boltlore.book.By;
import boltlore.book.KitLine;
import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.Person;
import boltlore.book.db.Book;
import boltlore.book.db.Reading;
import boltlore.book.db.Writing;
import boltlore.book.db.Written;
import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.faults.Outcome;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The calls by which it becomes known what really went into a kit, what was read of it, conceded and signed. */
public final class BuiltDesk {

    private final Book book;
    private final By by;

    public BuiltDesk(Book book, By by) {
        this.book = book;
        this.by = by;
    }

    /** Says which vehicle the kit goes into. */
    public Outcome<Written<OrderStanding>> vehicle(String name, String chassis) {
        return on(name, "", order -> Outcome.sound(new BuiltHappening.OfVehicle(name, chassis)));
    }

    /** Says that something is conceded or signed for; a signature only by somebody of the staff whom the book knows. */
    public Outcome<Written<OrderStanding>> note(String name, String what, String of, String says, String reason) {
        boolean signs = what.equals(BuiltHappening.Noted.SIGNATURE);
        boolean known = !signs
                || book.read(reading ->
                        !reading.persons().named(by.name(), Person.STAFF).isEmpty());
        return known
                ? on(name, reason, order -> Outcome.sound(new BuiltHappening.Noted(name, what, of, says)))
                : Outcome.faulty(Fault.of(
                        "order " + name,
                        "a signature of '" + by.name() + "', whom the book does not know",
                        "one of the staff",
                        "'boltlore person list' shows them; 'boltlore person add NAME' takes one down."));
    }

    /** Keeps a value that was read, judged by its limits; another unit than the last time is refused. */
    public Outcome<Written<BuiltReading>> measure(Measured measured, String reason) {
        BigDecimal least = measured.least();
        BigDecimal most = measured.most();
        if (least != null && most != null && least.compareTo(most) > 0) {
            return Outcome.faulty(Fault.of(
                    "order " + measured.order(),
                    "at least " + least.toPlainString() + ", at most " + most.toPlainString(),
                    "a least value that is no more than the most",
                    ""));
        }
        return book.write(
                by,
                writing -> frozen(writing, measured.order()).then(order -> {
                    String before = writing.asBuilt().readings(measured.order()).stream()
                            .filter(each -> each.measured().of().equals(measured.of()))
                            .map(each -> each.measured().unit())
                            .findFirst()
                            .orElse(measured.unit());
                    if (!before.equals(measured.unit())) {
                        return Outcome.faulty(Fault.of(
                                "order " + measured.order(),
                                measured.of() + " in " + measured.unit(),
                                "its unit, " + before + ", as it was read before",
                                ""));
                    }
                    writing.add(measured, reason);
                    List<BuiltReading> all = writing.asBuilt().readings(measured.order());
                    return Outcome.sound(all.get(all.size() - 1));
                }));
    }

    /** Says that so much of a part is bought, cut, coated or picked for the order; below 0 that it is not, after all. */
    public Outcome<Written<OrderStanding>> work(
            String name, String part, String finish, String stage, BigDecimal quantity, String reason) {
        return book.write(
                by,
                writing -> frozen(writing, name)
                        .then(order -> designed(writing, order, part).then(line -> {
                            writing.add(
                                    new BuiltHappening.Worked(
                                            name,
                                            part,
                                            line.revision(),
                                            finish.isEmpty() ? line.finish() : finish,
                                            stage,
                                            quantity),
                                    reason);
                            return OrderDesk.standing(writing, name);
                        })));
    }

    /**
     * Says that parts went in; all of them or none.
     *
     * @param parts an empty revision stands for that of the kit
     * @param reason asked for where the kit holds no such part: why it went in all the same
     */
    public Outcome<Written<List<BuiltPart>>> fit(String name, List<Fitted> parts, String reason) {
        return book.write(
                by,
                writing -> frozen(writing, name)
                        .then(order -> Outcome.all(parts.stream()
                                .map(part -> fit(writing, order, part, reason))
                                .toList())));
    }

    private static Outcome<BuiltPart> fit(Writing writing, OrderStanding order, Fitted part, String reason) {
        Outcome<KitLine> designed = designed(writing, order, part.part());
        if (!designed.faults().isEmpty() && (reason.isBlank() || part.revision().isEmpty())) {
            return Outcome.faulty(designed.faults()
                    .get(0)
                    .advising("Where it went in all the same, give its revision, and say why with --reason."));
        }
        String revision = part.revision().isEmpty() && designed instanceof Outcome.Sound<KitLine> line
                ? line.value().revision()
                : part.revision();
        return elsewhere(writing, part).then(free -> {
            long entry = writing.add(
                            new Fitted(
                                    order.name(),
                                    part.part(),
                                    revision,
                                    part.quantity(),
                                    part.serial(),
                                    part.lot(),
                                    part.heat()),
                            reason)
                    .number();
            return Outcome.sound(writing.asBuilt().fitted(entry).orElseThrow());
        });
    }

    /** One piece is in one kit only. */
    private static Outcome<Fitted> elsewhere(Reading reading, Fitted part) {
        if (part.serial().isEmpty()) {
            return Outcome.sound(part);
        }
        return reading.asBuilt()
                .inWith(part.part(), part.serial())
                .<Outcome<Fitted>>map(other -> Outcome.faulty(Fault.of(
                        "",
                        part.part() + " with serial number " + part.serial() + ", which is in order " + other.order(),
                        "a piece that is in no kit",
                        "Look at the number again; where it was taken out there, 'boltlore built take-out "
                                + other.order() + " " + other.entry() + "' says so.")))
                .orElseGet(() -> Outcome.sound(part));
    }

    /** Says that a part came out again. */
    public Outcome<Written<BuiltPart>> takeOut(String name, long entry, String reason) {
        if (reason.isBlank()) {
            return Outcome.faulty(Fault.of("order " + name, "no reason", "why it comes out", "Add --reason."));
        }
        return book.write(
                by,
                writing -> frozen(writing, name).then(order -> {
                    Optional<BuiltPart> fitted = writing.asBuilt().fitted(entry);
                    if (fitted.isEmpty()
                            || !fitted.get().order().equals(name)
                            || fitted.get().out() > 0) {
                        return Outcome.faulty(Fault.of(
                                "order " + name,
                                "entry " + entry,
                                "the entry of a part that is in this kit",
                                "'boltlore built show " + name + "' lists them."));
                    }
                    writing.add(new BuiltHappening.TakenOut(name, entry), reason);
                    return Outcome.sound(writing.asBuilt().fitted(entry).orElseThrow());
                }));
    }

    private Outcome<Written<OrderStanding>> on(
            String name, String reason, Function<OrderStanding, Outcome<BuiltHappening>> happening) {
        return book.write(
                by,
                writing -> frozen(writing, name)
                        .then(order -> happening.apply(order).then(one -> {
                            writing.add(one, reason);
                            return OrderDesk.standing(writing, name);
                        })));
    }

    /** The kit's first line of that part. */
    private static Outcome<KitLine> designed(Reading reading, OrderStanding order, String part) {
        List<KitLine> lines = reading.orders().lines(order.kit());
        return lines.stream()
                .filter(line -> line.part().equals(part))
                .findFirst()
                .map(Outcome::sound)
                .orElseGet(() -> Outcome.faulty(Fault.of(
                        "order " + order.name(),
                        "'" + part + "'",
                        "a part of its kit",
                        Nearest.advice(
                                part,
                                lines.stream().map(KitLine::part).distinct().toList(),
                                ""))));
    }

    private static Outcome<OrderStanding> frozen(Reading reading, String name) {
        return OrderDesk.standing(reading, name)
                .then(order -> order.state().frozen() && order.state() != OrderState.CANCELLED
                        ? Outcome.sound(order)
                        : Outcome.faulty(Fault.of(
                                "order " + name,
                                "'" + order.state().written() + "'",
                                "an order that is confirmed",
                                "'boltlore order confirm " + name + "' freezes its kit.")));
    }
}
