package boltlore.proof.revision;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Drawing;
import boltlore.catalogue.Family;
import boltlore.catalogue.Finish;
import boltlore.catalogue.FinishRule;
import boltlore.catalogue.Part;
import boltlore.measure.PartNumber;
import boltlore.proof.KitView;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Finds what is different about parts that keep their number: a kit with one of them is another kit. */
final class PartEdits {

    /** What makes a part another thing to make, buy, coat, fit, ship or sell; not where it lies. */
    private static final Map<String, Function<Part, @Nullable Object>> LOOKED_AT = lookedAt();

    private static final String PRICE = "price";

    private final Catalogue before;
    private final Catalogue after;
    private final Family familyBefore;
    private final Family familyAfter;

    PartEdits(KitView before, KitView after) {
        this.before = before.catalogue();
        this.after = after.catalogue();
        this.familyBefore = before.family();
        this.familyAfter = after.family();
    }

    private static Map<String, Function<Part, @Nullable Object>> lookedAt() {
        Map<String, Function<Part, @Nullable Object>> all = new LinkedHashMap<>();
        all.put("revision", Part::revision);
        all.put("unit", Part::unit);
        all.put("drawing", part -> part.making().drawing());
        all.put("material", part -> part.making().material());
        all.put("blank", part -> part.making().blank());
        all.put("pieces to cut", part -> part.making().cuts());
        all.put("operations", part -> part.making().operations());
        all.put("mass", Part::massKg);
        all.put("coat", Part::coat);
        all.put("length", Part::lengthMm);
        all.put("fixing", Part::fixing);
        all.put("holes", Part::holes);
        all.put("hand", Part::handed);
        all.put("connectors", Part::ports);
        all.put("cautions", Part::cautions);
        all.put("tracking", Part::tracked);
        all.put("customs", Part::customs);
        all.put("transport", Part::transport);
        all.put(PRICE, Part::cost);
        all.put(
                "prices by quantity",
                part -> part.buying() == null ? null : part.buying().breaks());
        return all;
    }

    /** None where it is the same part, or only one of the revisions has it. */
    List<PartEdit.Edit> of(PartNumber number) {
        Part was = before.parts().get(number);
        Part is = after.parts().get(number);
        if (was == null || is == null) {
            return List.of();
        }
        List<PartEdit.Edit> edits = new ArrayList<>();
        LOOKED_AT.forEach((what, look) -> {
            if (!same(look.apply(was), look.apply(is))) {
                edits.add(new PartEdit.Edit(what, word(what, look.apply(was)), word(what, look.apply(is))));
            }
        });
        if (was.coat() != null
                && is.coat() != null
                && !finishes(was, familyBefore, before).equals(finishes(is, familyAfter, after))) {
            edits.add(new PartEdit.Edit("finish", "", ""));
        }
        return edits;
    }

    private static boolean same(@Nullable Object was, @Nullable Object is) {
        if (was instanceof BigDecimal one && is instanceof BigDecimal other) {
            return one.compareTo(other) == 0;
        }
        return Objects.equals(was, is);
    }

    private String word(String what, @Nullable Object value) {
        if (value instanceof Drawing drawing) {
            return drawing.number() + " issue " + drawing.issue();
        }
        if (value instanceof BigDecimal figure) {
            return what.equals(PRICE)
                    ? after.workshop().currency() + " " + figure.toPlainString()
                    : figure.stripTrailingZeros().toPlainString() + " kg";
        }
        return value instanceof String || value instanceof Integer ? value.toString() : "";
    }

    /** The finishes that the part may take, by the value that decides. */
    private static Map<String, Optional<Finish>> finishes(Part part, Family family, Catalogue catalogue) {
        Map<String, Optional<Finish>> finishes = new TreeMap<>();
        CoatingSpec coat = Objects.requireNonNull(part.coat());
        FinishRule rule = coat.role() == null
                ? new FinishRule.Fixed(String.valueOf(coat.finish()))
                : family.finishes().get(coat.role());
        if (rule instanceof FinishRule.Fixed fixed) {
            finishes.put("", Optional.ofNullable(catalogue.finishes().get(fixed.finish())));
        } else if (rule instanceof FinishRule.DecidedBy decided) {
            family.option(decided.option())
                    .ifPresent(option -> option.values()
                            .forEach(value -> finishes.put(
                                    decided.option() + "=" + value.value(),
                                    Optional.ofNullable(value.facts().finish()).map(catalogue.finishes()::get))));
        }
        return finishes;
    }
}
