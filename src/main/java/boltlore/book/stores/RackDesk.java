package boltlore.book.stores;

import boltlore.bill.Item;
import boltlore.book.BuiltHappening.Worked;
import boltlore.book.By;
import boltlore.book.Happening;
import boltlore.book.OrderHappening;
import boltlore.book.ShopHappening.Judged;
import boltlore.book.ShopHappening.Kept;
import boltlore.book.ShopHappening.Used;
import boltlore.book.Subject;
import boltlore.book.db.Book;
import boltlore.book.db.Reading;
import boltlore.book.db.Shop;
import boltlore.book.db.Writing;
import boltlore.book.db.Written;
import boltlore.book.orders.OrderDesk;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Material;
import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.faults.Outcome;
import boltlore.measure.Digits;
import boltlore.trades.KitInWork;
import boltlore.trades.cutting.CuttingTrade.CutTogether;
import boltlore.trades.cutting.Remnant;
import boltlore.trades.cutting.RemnantRack;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The rack of remnants with their heats, and filled-in records with what became of them. */
public final class RackDesk {

    private static final String CUT = "cut";

    private final Book book;
    private final By by;

    public RackDesk(Book book, By by) {
        this.book = book;
        this.by = by;
    }

    /** The rack as cutting takes it: those at hand, and the marks of all that were there. */
    public static RemnantRack rack(Reading reading) {
        List<Shop.Rest> all = reading.shop().rests(true);
        return new RemnantRack(
                all.stream()
                        .filter(rest -> rest.usedBy().isEmpty())
                        .map(RackDesk::remnant)
                        .toList(),
                all.stream()
                        .filter(rest -> !rest.usedBy().isEmpty())
                        .map(RackDesk::remnant)
                        .toList());
    }

    private static Remnant remnant(Shop.Rest rest) {
        return new Remnant(rest.remnant(), rest.material(), rest.lengthMm(), rest.heat());
    }

    /** Lays a remnant on the rack. */
    public Outcome<Written<Kept>> add(Kept kept, Catalogue catalogue, String reason) {
        Material material = catalogue.materials().get(kept.material());
        if (material == null || material.bars() == null) {
            return Outcome.faulty(Fault.of(
                    "",
                    "the material '" + kept.material() + "'",
                    "a material that is bought in bars",
                    Nearest.advice(kept.material(), catalogue.materials().keySet(), "")));
        }
        BigDecimal longest = BigDecimal.valueOf(material.bars().longest().lengthMm());
        BigDecimal shortest = material.bars().keepFromMm();
        if (kept.lengthMm().compareTo(longest) > 0 || kept.lengthMm().compareTo(shortest) < 0) {
            return Outcome.faulty(Fault.of(
                    "remnant " + kept.remnant(),
                    Digits.plain(kept.lengthMm()) + " mm",
                    "from " + Digits.plain(shortest) + " mm, from where rests are kept, to " + Digits.plain(longest)
                            + " mm, the longest bar that is bought",
                    "Measure it again."));
        }
        return book.write(by, writing -> {
            if (writing.shop().rests(true).stream()
                    .anyMatch(rest -> rest.remnant().equals(kept.remnant()))) {
                return Outcome.faulty(Fault.of(
                        "remnant " + kept.remnant(),
                        "a mark that was given before",
                        "a mark of its own",
                        "Mark it anew."));
            }
            writing.add(kept, reason);
            return Outcome.sound(kept);
        });
    }

    /** Writes down the heat of a remnant, which is known when its bar is fetched. */
    public Outcome<Written<Kept>> heat(String mark, String heat, String reason) {
        return book.write(
                by,
                writing -> onRack(writing, mark).then(rest -> {
                    Kept kept = new Kept(mark, rest.material(), rest.lengthMm(), heat, rest.leftBy());
                    writing.add(kept, reason);
                    return Outcome.sound(kept);
                }));
    }

    /** Takes a remnant off the rack. */
    public Outcome<Written<Used>> scrap(String mark, String reason) {
        if (reason.isBlank()) {
            return Outcome.faulty(Fault.of("remnant " + mark, "no reason", "why it goes", "Add --reason."));
        }
        return book.write(
                by,
                writing -> onRack(writing, mark).then(rest -> {
                    Used used = new Used(mark, "scrap");
                    writing.add(used, reason);
                    return Outcome.sound(used);
                }));
    }

    private static Outcome<Shop.Rest> onRack(Writing writing, String mark) {
        List<Shop.Rest> there = writing.shop().rests(false);
        return there.stream()
                .filter(rest -> rest.remnant().equals(mark))
                .findFirst()
                .map(Outcome::sound)
                .orElseGet(() -> Outcome.faulty(Fault.of(
                        "",
                        "the remnant '" + mark + "'",
                        "one on the rack",
                        Nearest.advice(
                                mark,
                                there.stream().map(Shop.Rest::remnant).toList(),
                                "'boltlore rack list' shows them."))));
    }

    /**
     * Says that bars were cut as planned: remnants that were taken are gone, new ones lie there with the heat of their bar.
     *
     * @param heats of new bars by their material, as far as they are known
     */
    public Outcome<Written<List<Kept>>> cut(
            List<KitInWork> kits, CutTogether cut, Map<String, String> heats, String reason) {
        return book.write(by, writing -> {
            List<Fault> again = kits.stream()
                    .flatMap(kit -> cutBefore(writing, kit, reason).stream())
                    .toList();
            if (!again.isEmpty()) {
                return Outcome.faulty(again);
            }
            RemnantRack before = rack(writing);
            Set<String> there = before.remnants().stream().map(Remnant::name).collect(Collectors.toSet());
            Set<String> left =
                    cut.after().remnants().stream().map(Remnant::name).collect(Collectors.toSet());
            Set<String> taken = cut.after().usedUp().stream().map(Remnant::name).collect(Collectors.toSet());
            if (isAnother(before, there, taken)) {
                return Outcome.faulty(Fault.of(
                        "",
                        "a rack that another desk has changed just now",
                        "the rack that the plan was made with",
                        "Cut again."));
            }
            String orders = kits.stream().map(kit -> kit.order().name()).collect(Collectors.joining(", "));
            there.stream()
                    .filter(mark -> !left.contains(mark))
                    .sorted()
                    .forEach(mark -> writing.add(new Used(mark, orders), reason));
            List<Kept> kept = cut.after().remnants().stream()
                    .filter(rest -> !there.contains(rest.name()))
                    .map(rest -> kept(rest, heats, orders))
                    .toList();
            kept.forEach(one -> writing.add(one, reason));
            kits.forEach(kit -> worked(writing, kit));
            return Outcome.sound(kept);
        });
    }

    private static Kept kept(Remnant rest, Map<String, String> heats, String orders) {
        return new Kept(
                rest.name(),
                rest.material(),
                rest.lengthMm(),
                rest.heat().isEmpty() ? heats.getOrDefault(rest.material(), "") : rest.heat(),
                orders);
    }

    /** The same kit is sawn once; a second time, after a change or a mistake, somebody says why. */
    private static Optional<Fault> cutBefore(Reading reading, KitInWork kit, String reason) {
        String order = kit.order().name();
        return reading.journal().of(new Subject(OrderHappening.WHAT, order)).stream()
                .filter(entry -> reason.isBlank()
                        && entry.happening() instanceof Outcome.Sound<Happening> sound
                        && sound.value() instanceof Worked worked
                        && worked.stage().equals(CUT)
                        && worked.quantity().signum() > 0)
                .reduce((first, last) -> last)
                .map(entry -> Fault.of(
                        "order " + order,
                        "an order that was cut on "
                                + LocalDate.ofInstant(entry.stamp().at(), ZoneOffset.UTC),
                        "one that is not cut yet, or why it is cut again",
                        "Say why with --reason."));
    }

    /** Whether the rack is not the one that the plan took these remnants from. */
    private static boolean isAnother(RemnantRack rack, Set<String> there, Set<String> taken) {
        Set<String> used = rack.usedUp().stream().map(Remnant::name).collect(Collectors.toSet());
        return !taken.containsAll(used)
                || taken.stream().anyMatch(mark -> !there.contains(mark) && !used.contains(mark));
    }

    private static void worked(Writing writing, KitInWork kit) {
        kit.bill()
                .all()
                .filter(item -> !item.part().making().cuts().isEmpty())
                .collect(Collectors.groupingBy(Item::part, LinkedHashMap::new, Collectors.toList()))
                .forEach((part, items) -> writing.add(
                        new Worked(
                                kit.order().name(),
                                part.number().text(),
                                part.revision(),
                                items.get(0).finish(),
                                CUT,
                                items.stream().map(Item::quantity).reduce(BigDecimal.ZERO, BigDecimal::add)),
                        ""));
    }

    /** Keeps a filled-in record with what was found in it; an earlier one of the same order stays beside it. */
    public Outcome<Written<List<Judged>>> keep(
            List<String> orders, String of, byte[] record, boolean passed, List<String> findings, String reason) {
        return book.write(by, writing -> kept(writing, orders, of, record, passed, findings, reason));
    }

    static Outcome<List<Judged>> kept(
            Writing writing,
            List<String> orders,
            String of,
            byte[] record,
            boolean passed,
            List<String> findings,
            String reason) {
        return Outcome.all(orders.stream()
                .map(order -> OrderDesk.standing(writing, order).then(standing -> {
                    Judged judged = new Judged(order, of, writing.keep(record), passed, findings);
                    writing.add(judged, reason);
                    return Outcome.sound(judged);
                }))
                .toList());
    }
}
