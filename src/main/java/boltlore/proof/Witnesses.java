package boltlore.proof;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.EffectivityScale;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.choices.Choices;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.order.OrderAddresses;
import boltlore.order.OrderBuilder;
import boltlore.order.OrderTerms;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** The orders that show the defects of a family, complete and ready to run. */
public final class Witnesses {

    private Witnesses() {}

    /** An order that shows a defect. */
    public record Witness(Answer.Defect defect, Order order) {}

    /** An order for each defect that an order can show, in the order of the defects. */
    public static List<Witness> find(Catalogue catalogue, FamilyProof proof) {
        List<Witness> all = new ArrayList<>();
        for (Answer.Defect defect : proof.openDefects().toList()) {
            defect.witness()
                    .ifPresent(choices ->
                            all.add(new Witness(defect, order(catalogue, defect, choices, all.size() + 1))));
        }
        return all;
    }

    private static Order order(Catalogue catalogue, Answer.Defect defect, Choices choices, int number) {
        Statement statement = defect.statement();
        LeftOut leftOut = statement.kind().leavesOutUnused() ? new LeftOut.AllUnused() : new LeftOut.Undecided();
        return complete(
                catalogue,
                String.format(Locale.ROOT, "%s-example-%03d", choices.family().name(), number),
                choices,
                leftOut,
                statement.title() + ". " + statement.refuted());
    }

    /** An order with these choices that nobody has placed; it has a date and a chassis number only where the kit asks for them. */
    public static Order complete(Catalogue catalogue, String name, Choices choices, LeftOut leftOut, String notes) {
        OrderBuilder order = new OrderBuilder(plain(catalogue, name, choices, leftOut, notes));
        some(choices, EffectivityScale.By.PLACED).ifPresent(day -> order.placed(LocalDate.ofEpochDay(day)));
        some(choices, EffectivityScale.By.CHASSIS).ifPresent(number -> order.chassis(number.toString()));
        return order.build();
    }

    private static Optional<Integer> some(Choices choices, EffectivityScale.By by) {
        return choices.family()
                .option(by.option())
                .flatMap(option -> Optional.ofNullable(option.scale()))
                .flatMap(scale -> choices.value(by.option()).flatMap(scale::piece))
                .map(EffectivityScale.Piece::any);
    }

    private static Order plain(Catalogue catalogue, String name, Choices choices, LeftOut leftOut, String notes) {
        return new Order(
                name,
                choices.family().name(),
                "Example order",
                "",
                language(catalogue, choices),
                null,
                null,
                null,
                choices,
                new TreeSet<>(),
                new TreeSet<>(),
                List.of(),
                leftOut,
                List.of(),
                List.of(),
                notes,
                OrderTerms.NONE,
                Map.of(),
                "",
                OrderAddresses.NONE);
    }

    private static String language(Catalogue catalogue, Choices choices) {
        List<String> known = catalogue.workshop().languages();
        return choices.inRole(Role.LANGUAGE)
                .map(OptionValue::value)
                .filter(known::contains)
                .orElse(known.get(0));
    }
}
