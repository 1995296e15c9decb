package boltlore.choosing;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Part;
import boltlore.logic.All;
import boltlore.order.Extra;
import java.util.List;
import java.util.stream.Stream;

/** The cases in which the extras of an order have one price each: an extra may be coated as the kit is. */
final class ExtraCases {

    private ExtraCases() {}

    /** Conditions of which exactly one holds for every order. */
    static List<Condition> list(List<Extra> extras, Catalogue catalogue, Family family) {
        FinishCases finishes = new FinishCases(family);
        List<List<FinishCases.Case>> open = extras.stream()
                .filter(extra -> !extra.suppliedByCustomer() && extra.finish().isEmpty())
                .filter(extra -> extra.cost() == null && extra.price() == null)
                .flatMap(extra -> Stream.ofNullable(extra.part()))
                .flatMap(part -> whole(catalogue.part(part), catalogue))
                .map(finishes::of)
                .filter(cases -> cases.size() > 1)
                .distinct()
                .toList();
        List<Condition> all = List.of(Condition.ALWAYS);
        for (List<FinishCases.Case> cases : open) {
            all = all.stream()
                    .flatMap(before -> cases.stream().map(each -> All.of(before, each.when())))
                    .toList();
        }
        return all;
    }

    private static Stream<Part> whole(Part part, Catalogue catalogue) {
        return Stream.concat(
                Stream.of(part),
                part.contains().stream().flatMap(child -> whole(catalogue.part(child.part()), catalogue)));
    }
}
