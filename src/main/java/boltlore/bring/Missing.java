package boltlore.bring;

import static java.util.Map.entry;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What parts need and their list does not say: asked once for all of them, and kept in the mapping. */
final class Missing {

    /** What parts need and lists leave out, in the order in which it is asked. */
    static final List<String> MISSING = List.of(
            "currency",
            "cost",
            "massKg",
            "massUnit",
            "unit",
            "fractionUnit",
            "source",
            "revision",
            "stage",
            "subSystem");

    private static final Map<String, String> ASKS = Map.ofEntries(
            entry("currency", "which currency are the costs in, such as EUR?"),
            entry("cost", "which cost do parts get that the list has no readable cost of, such as 0?"),
            entry("massKg", "which mass in kg do parts get that the list has no mass of, such as 0.1?"),
            entry("massUnit", "are the masses in kg or in g?"),
            entry("unit", "in which unit are parts counted whose unit is not said?"),
            entry(
                    "fractionUnit",
                    "in which unit (m, l, kg) are those counted that stand with fractions, and no unit is said?"),
            entry("source", "are parts bought or made (buy, make)?"),
            entry("revision", "which revision do parts have?"),
            entry("stage", "at which fit stage of the workshop are the parts fitted?"),
            entry("subSystem", "to which sub-system of the workshop do the parts belong?"));

    /** What is true of nearly every list, and stands in the mapping to be changed. */
    private static final Map<String, String> USUAL = Map.of("unit", "each", "source", "buy", "revision", "A");

    private final Brought brought;
    private final Answers answers;
    private final Known into;
    private final List<Doubt> doubts;
    private final Map<String, String> said = new LinkedHashMap<>();

    Missing(Brought brought, Answers answers, List<Doubt> doubts) {
        this.brought = brought;
        this.answers = answers;
        this.into = brought.into();
        this.doubts = doubts;
    }

    static String asks(String key) {
        return ASKS.getOrDefault(key, "");
    }

    /** What the mapping says, or the mark that it is open, by key. */
    Map<String, String> said() {
        return said;
    }

    /** What the mapping says where a list says nothing, or the mark that it is still open. */
    String lacking(String key) {
        return said.computeIfAbsent(
                key, each -> brought.mapping().missing().getOrDefault(key, USUAL.getOrDefault(key, Mapping.OPEN)));
    }

    void ask(Collection<DraftPart> parts) {
        boolean costs = false;
        for (DraftPart part : parts) {
            costs |= part.cost().isPresent();
            need(part.cost().isPresent(), "cost");
            need(part.mass().isPresent() || !part.contains().isEmpty(), "massKg");
            need(!part.entry().text(Role.REVISION).isEmpty(), "revision");
            need(!part.contains().isEmpty(), "source");
            if (part.mass().isPresent() && part.massUnit().isEmpty()) {
                lacking("massUnit");
            }
        }
        unknownSuppliers(parts);
        if (into.isNew() || costs) {
            currency();
        }
        if (!into.isNew() && into.stages().size() != 1) {
            lacking("stage");
        }
        boolean strange = parts.stream().anyMatch(part -> !into.subSystems().contains(part.subSystem()));
        if (!into.isNew() && strange) {
            lacking("subSystem");
        }
    }

    /** Suppliers that an existing workshop does not know are told: their parts are brought in without them. */
    private void unknownSuppliers(Collection<DraftPart> parts) {
        parts.stream()
                .map(part -> part.entry().text(Role.SUPPLIER))
                .filter(name ->
                        !into.isNew() && !name.isEmpty() && !into.suppliers().contains(name))
                .distinct()
                .forEach(name -> doubts.add(new Doubt(
                        "supplier '" + name + "'",
                        0,
                        false,
                        "the workshop does not know it, so its parts come in without: add it to workshop.json first",
                        "")));
    }

    private void need(boolean said, String key) {
        if (!said && !into.defaults().contains(key)) {
            lacking(key);
        }
    }

    private void currency() {
        Map<String, String> given = brought.mapping().missing();
        String found = Currencies.of(brought.read());
        if (given.containsKey("currency")) {
            said.put("currency", given.get("currency"));
        } else {
            said.put("currency", found.isEmpty() ? into.currency().isEmpty() ? Mapping.OPEN : into.currency() : found);
        }
        String currency = said.get("currency");
        if (!into.currency().isEmpty() && !currency.equals(Mapping.OPEN) && !currency.equals(into.currency())) {
            String at = "missing/currency";
            if (answers.at(at).isEmpty()) {
                doubts.add(new Doubt(
                        at,
                        0,
                        true,
                        "the list counts in " + currency + ", the workshop in " + into.currency()
                                + ": convert the list, or say 'leave out' to bring it in without costs",
                        Answers.LEAVE_OUT));
            }
        }
    }
}
