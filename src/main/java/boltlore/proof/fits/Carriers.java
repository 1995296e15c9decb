package boltlore.proof.fits;

import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.LineName;
import boltlore.proof.KitView;
import java.util.List;
import java.util.stream.Stream;

/**
 * What some line carries is carried in every order: a bracket that stands in fewer orders than what hangs on it leaves that
 * hanging on nothing. Where a position names its brackets under 'heldBy', the rules say so themselves; brackets that an order
 * leaves out on purpose are counted as there.
 */
final class Carriers {

    private Carriers() {}

    static List<FitFinding.Possible> findings(KitView kit) {
        return kit.family().positions().stream()
                .filter(position -> position.heldBy().isEmpty())
                .flatMap(position -> {
                    List<LineName> carriers = kit.family()
                            .lines()
                            .filter(line -> line.carries().contains(position.name()))
                            .map(Line::name)
                            .toList();
                    return carriers.isEmpty()
                            ? Stream.<FitFinding.Possible>empty()
                            : Stream.of(uncarried(kit, position, carriers));
                })
                .toList();
    }

    private static FitFinding.Possible uncarried(KitView kit, Position position, List<LineName> carriers) {
        return FitFinding.CARRIED_BY_NOTHING.when(
                All.of(
                        kit.kit().filled(position.name()),
                        Any.but(Any.of(carriers.stream().map(kit.kit()::called).toList()))),
                position.name().text(),
                "",
                carriers,
                "position",
                Broken.said(kit, position.name()),
                "carriers",
                carriers.stream().map(LineName::text).sorted().toList());
    }
}
