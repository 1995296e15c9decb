package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How many pieces come with one of a part: itself, what it contains, what it asks for each time and what is sawn for it.
 * Sheets have a line or a box for each, so that a slip of three zeros would fill the memory.
 */
public final class PieceCounts {

    /** Most pieces that one line or extra may bring; whole kits have some two thousand. */
    public static final int MOST = 20_000;

    private record Brought(PartNumber part, BigDecimal quantity) {}

    private final Map<PartNumber, Part> parts;
    private final Map<PartNumber, List<Need>> companions = new HashMap<>();
    private final Map<PartNumber, Long> known = new HashMap<>();

    /** @param parts none of which brings itself, by whatever way round */
    public PieceCounts(Map<PartNumber, Part> parts, Family family) {
        this.parts = parts;
        family.companions().forEach(each -> companions.put(each.part(), each.needs()));
    }

    /** Whether so many of a part are more pieces than {@link #MOST}. */
    public boolean tooMany(PartNumber part, BigDecimal quantity) {
        return times(quantity, of(part)) > MOST;
    }

    /** The pieces of one, or {@link #MOST} and one more where they are more. Chains may be longer than the stack. */
    private long of(PartNumber wanted) {
        Deque<PartNumber> open = new ArrayDeque<>(List.of(wanted));
        while (!open.isEmpty()) {
            PartNumber part = open.getLast();
            List<Brought> brought = brought(parts.get(part));
            List<PartNumber> first = brought.stream()
                    .map(Brought::part)
                    .filter(each -> !known.containsKey(each))
                    .toList();
            if (first.isEmpty()) {
                known.put(part, sum(parts.get(part), brought));
                open.removeLast();
            } else {
                open.addAll(first);
            }
        }
        return known.getOrDefault(wanted, 1L);
    }

    private long sum(@Nullable Part part, List<Brought> brought) {
        long pieces = 1;
        if (part != null) {
            pieces += part.making().cuts().stream().mapToLong(Cut::count).sum();
        }
        for (Brought each : brought) {
            pieces += times(each.quantity(), known.getOrDefault(each.part(), 1L));
        }
        return Math.min(pieces, MOST + 1L);
    }

    private List<Brought> brought(@Nullable Part part) {
        List<Brought> brought = new ArrayList<>();
        if (part != null) {
            part.contains().forEach(child -> brought.add(new Brought(child.part(), child.quantity())));
            part.needs().forEach(need -> brought.add(brought(need)));
            companions.getOrDefault(part.number(), List.of()).forEach(need -> brought.add(brought(need)));
        }
        return brought;
    }

    private static Brought brought(Need need) {
        return new Brought(
                need.part(),
                need.ask() instanceof Need.Each each ? each.quantity() : ((Need.AtJoint) need.ask()).atLeast());
    }

    /** Fractions, which are lengths and litres, count as one more. */
    private static long times(BigDecimal quantity, long pieces) {
        return quantity.setScale(0, RoundingMode.CEILING)
                        .min(BigDecimal.valueOf(MOST + 1L))
                        .longValueExact()
                * pieces;
    }
}
