package boltlore.proof.fits;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Option;
import boltlore.catalogue.Part;
import boltlore.catalogue.PartKind;
import boltlore.catalogue.PartKind.Needed;
import boltlore.catalogue.Role;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.PartNumber;
import boltlore.proof.KitView;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What every vehicle must have, whatever its own family's file asks for: where a family narrows both a line and the orders in
 * which its position is required, the house still asks for one.
 */
final class NeededKinds {

    private final KitView kit;
    private final Map<String, PartKind> kinds;
    private final List<Part> reachable;
    /** Of the kinds that are asked for alone: most of a house's kinds are needed nowhere. */
    private final Map<String, List<PartNumber>> parts = new HashMap<>();

    private NeededKinds(KitView kit) {
        Catalogue catalogue = kit.catalogue();
        this.kit = kit;
        this.kinds = catalogue.house().kinds();
        this.reachable = kit.parts().reachable().stream().map(catalogue::part).toList();
    }

    private List<PartNumber> parts(String kind) {
        return parts.computeIfAbsent(kind, name -> {
            PartKind known = kinds.get(name);
            return known == null
                    ? List.of()
                    : reachable.stream().filter(known::covers).map(Part::number).toList();
        });
    }

    static List<FitFinding.Possible> findings(KitView kit) {
        if (kit.catalogue().house().kinds().isEmpty()) {
            return List.of();
        }
        NeededKinds needed = new NeededKinds(kit);
        List<FitFinding.Possible> all = new ArrayList<>();
        for (PartKind kind : needed.kinds.values()) {
            if (kind.needed() != null) {
                kind.needed().with().forEach(with -> needed.without(kind, kind.needed(), with, all));
            }
        }
        return all;
    }

    private void without(PartKind kind, Needed needed, String with, List<FitFinding.Possible> all) {
        Condition asked = All.of(present(List.of(with)), inMarkets(needed.markets()));
        Condition lacking = All.of(asked, Any.but(present(List.of(kind.name()))));
        if (asked.equals(Any.NEVER)) {
            return;
        }
        all.add(FitFinding.NEEDED_KIND_MISSING.when(
                lacking,
                kind.name(),
                with,
                List.of(),
                "kind",
                kind.says(),
                "with",
                Objects.requireNonNull(kinds.get(with)).says(),
                "because",
                needed.because(),
                "source",
                needed.source()));
    }

    private Condition present(Collection<String> names) {
        return Any.of(names.stream()
                .flatMap(name -> parts(name).stream())
                .map(kit.parts()::present)
                .toList());
    }

    /** A family without a question of the market sells to all of them. */
    private Condition inMarkets(List<String> markets) {
        Option option = kit.family().inRole(Role.MARKET).orElse(null);
        if (markets.isEmpty() || option == null) {
            return Condition.ALWAYS;
        }
        SortedSet<String> own = new TreeSet<>(markets);
        own.retainAll(option.valueNames());
        return own.isEmpty() ? Any.NEVER : kit.kit().unfolded(new Condition.Is(option.name(), own));
    }
}
