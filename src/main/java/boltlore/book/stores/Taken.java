package boltlore.book.stores;

import boltlore.book.Held;
import boltlore.book.db.Reading;
import boltlore.book.db.Stock;
import boltlore.catalogue.Tracked;
import boltlore.catalogue.Upkeep;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.Digits;
import boltlore.trades.KitInWork;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What a picker has in the hand.
 *
 * @param part that is taken; where it stands in for another, that is named
 * @param quantity above 0, or nothing for all that is left
 * @param bin where it is taken from; empty for wherever it lies
 * @param concession words or number under which another part may be taken; asked for unless the catalogue names it as an
 *     alternate
 */
public record Taken(
        String part,
        String finish,
        @Nullable BigDecimal quantity,
        String lot,
        List<String> serials,
        String bin,
        String instead,
        String concession) {

    /** Shorter is no number and no reason, but a way past the question. */
    private static final int LEAST_SAID = 8;

    private static boolean isShort(String said) {
        return said.strip().length() < LEAST_SAID;
    }

    Outcome<PickLine> line(Reading reading, KitInWork kit) {
        String asked = instead.isEmpty() ? part : instead;
        List<PickLine> ofPart = PickLine.of(reading, kit).stream()
                .filter(line -> line.part().number().text().equals(asked))
                .toList();
        String subject = "order " + kit.order().name();
        if (ofPart.isEmpty()) {
            return Outcome.faulty(Fault.of(
                    subject,
                    "part " + asked + ", which its kit does not hold",
                    "a part of its picking list",
                    "'boltlore pick list " + kit.order().name() + "' shows them; put this one back."));
        }
        return ofPart.stream()
                .filter(line -> line.finish().equals(finish))
                .findFirst()
                .map(Outcome::sound)
                .orElseGet(() -> Outcome.faulty(Fault.of(
                        subject,
                        asked + (finish.isEmpty() ? " without a finish" : " in " + finish),
                        ofPart.stream().map(PickLine::key).collect(Collectors.joining(" or ")),
                        "Say which with --finish.")));
    }

    /**
     * Another part only as the catalogue names it, as an alternate or as what supersedes it, or under a concession that says
     * something, with a reason of whoever takes it; never more than is left.
     */
    Outcome<PickLine> allowed(PickLine line, String reason) {
        Upkeep upkeep = line.part().upkeep();
        boolean named =
                upkeep.alternates().stream().anyMatch(each -> each.part().text().equals(part))
                        || (upkeep.replacedBy() != null
                                && upkeep.replacedBy().part().text().equals(part));
        if (!instead.isEmpty() && !named && (isShort(concession) || isShort(reason))) {
            return Outcome.faulty(Fault.of(
                    "order " + line.order(),
                    part + " in the place of " + instead + ", which the catalogue does not allow",
                    "an alternate of it, or a concession with its number and a reason, each of " + LEAST_SAID
                            + " characters or more",
                    "Ask the engineer, and name the concession with --concession and why it is taken with --reason."));
        }
        BigDecimal some = wanted(line);
        boolean nothing = some.signum() <= 0 || (quantity != null && quantity.signum() <= 0);
        if (some.compareTo(line.left()) > 0 || nothing) {
            return Outcome.faulty(Fault.of(
                    "order " + line.order(),
                    Digits.plain(nothing && quantity != null ? quantity : some) + " of " + line.key() + ", of which "
                            + Digits.plain(line.left()) + " are left to pick",
                    nothing ? "a number above 0" : "no more than that",
                    ""));
        }
        return StoresDesk.whole(line.part(), some).then(part -> Outcome.sound(line));
    }

    private BigDecimal wanted(PickLine line) {
        if (!serials.isEmpty()) {
            return BigDecimal.valueOf(serials.size());
        }
        return quantity == null ? line.left() : quantity;
    }

    /** From which bins and lots it comes; faulty where that must be said, or too little lies there. */
    Outcome<List<Stock.Row>> rows(Reading reading, PickLine line) {
        BigDecimal some = wanted(line);
        BigDecimal free = OnShelf.free(reading, part, finish, line.order());
        if (free.compareTo(some) < 0) {
            return Outcome.faulty(OnShelf.tooLittle(Stock.key(part, finish), some, free));
        }
        List<Stock.Row> fitting = reading.stock().of(part).stream()
                .filter(row -> row.held().finish().equals(finish))
                .filter(row -> lot.isEmpty() || row.held().lot().equals(lot))
                .filter(row -> bin.isEmpty() || row.held().bin().equals(bin))
                .filter(row -> serials.isEmpty() || serials.contains(row.held().serial()))
                .sorted(Comparator.comparing(
                        row -> !row.held().bin().equals(line.part().bin())))
                .toList();
        return said(line, fitting).then(clear -> drawn(some, fitting));
    }

    private Outcome<PickLine> said(PickLine line, List<Stock.Row> fitting) {
        Tracked tracked = line.part().tracked();
        String what = "part " + part;
        if (tracked == Tracked.SERIAL && serials.isEmpty()) {
            return Outcome.faulty(
                    Fault.of(what, "no serial number", "that of each piece", "Scan it, or add --serial."));
        }
        long lots = fitting.stream().map(row -> row.held().lot()).distinct().count();
        return tracked == Tracked.LOT && lot.isEmpty() && lots > 1
                ? Outcome.faulty(Fault.of(
                        what,
                        "no lot, where " + lots + " lie there",
                        fitting.stream().map(row -> row.held().lot()).distinct().collect(Collectors.joining(", ")),
                        "Read it on the goods, and add --lot."))
                : Outcome.sound(line);
    }

    private Outcome<List<Stock.Row>> drawn(BigDecimal wanted, List<Stock.Row> fitting) {
        List<Stock.Row> drawn = new ArrayList<>();
        BigDecimal left = wanted;
        for (Stock.Row row : fitting) {
            BigDecimal some = row.quantity().min(left);
            if (some.signum() > 0) {
                drawn.add(new Stock.Row(row.held(), some));
                left = left.subtract(some);
            }
        }
        String what = new Held(part, finish, lot, String.join(" ", serials), bin).toString();
        return left.signum() > 0
                ? Outcome.faulty(OnShelf.tooLittle(what, wanted, wanted.subtract(left)))
                : Outcome.sound(drawn);
    }
}
