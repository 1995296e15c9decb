package boltlore.bill;

import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.measure.LineName;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.stream.Stream;

/**
 * A part at its place in the kit.
 *
 * @param level 1 for what a line or a need brings, one more for each assembly it is inside of
 * @param position of the line that it goes back to, which gives sub-system, fit stage and bag
 * @param line that it goes back to
 * @param finish that it takes, or empty where it is not coated
 * @param quantity of it at this place in the whole kit, in the part's unit
 * @param picked whether stores hand it out at this level: it is picked whole, and nothing above it is
 * @param inside what it contains, level + 1
 */
public record Item(
        int level,
        Position position,
        LineName line,
        Part part,
        String finish,
        BigDecimal quantity,
        Origin origin,
        boolean picked,
        List<Item> inside) {

    /** This item and all inside it, in printing order. */
    public Stream<Item> all() {
        if (inside.isEmpty()) {
            return Stream.of(this);
        }
        List<Item> all = new ArrayList<>();
        Deque<Item> open = new ArrayDeque<>(List.of(this));
        while (!open.isEmpty()) {
            Item next = open.pop();
            all.add(next);
            for (int i = next.inside.size() - 1; i >= 0; i--) {
                open.push(next.inside.get(i));
            }
        }
        return all.stream();
    }

    public String stage() {
        return position.stage();
    }

    public boolean coated() {
        return part.coat() != null;
    }
}
