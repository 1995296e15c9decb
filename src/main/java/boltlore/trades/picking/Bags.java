package boltlore.trades.picking;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.catalogue.Part;
import boltlore.catalogue.Stage;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Sorts what is picked into the bags and crates of the fit stages. */
final class Bags {

    private record Place(String bag, Piece piece) {}

    private static final Comparator<Place> LOOSE_LAST = Comparator.comparing(
                    (Place place) -> place.bag().isEmpty())
            .thenComparing(Place::bag)
            .thenComparing(Place::piece);

    private final Spares spares;
    private final ShownCautions shown;

    private Bags(Spares spares, ShownCautions shown) {
        this.spares = spares;
        this.shown = shown;
    }

    static List<BagPage> fill(Bill bill, List<Stage> stages, ShownCautions shown) {
        Bags bags = new Bags(new Spares(bill.picked().map(Item::part)), shown);
        SortedMap<String, List<Item>> byStage = bill.picked()
                .collect(Collectors.groupingBy(
                        Item::stage, () -> new TreeMap<>(fittingOrder(stages)), Collectors.toList()));
        return byStage.entrySet().stream()
                .map(stage -> new BagPage(stage.getKey(), bags.rows(stage.getValue())))
                .toList();
    }

    /** The workshop's order of fit stages; one that it does not list comes last. */
    static Comparator<String> fittingOrder(List<Stage> stages) {
        List<String> names = stages.stream().map(Stage::name).toList();
        return Comparator.comparing((String stage) -> names.contains(stage) ? names.indexOf(stage) : names.size())
                .thenComparing(Comparator.naturalOrder());
    }

    private List<BagRow> rows(List<Item> items) {
        SortedMap<Place, List<Item>> places = items.stream()
                .collect(Collectors.groupingBy(
                        item -> new Place(item.position().bag(), Piece.of(item)),
                        () -> new TreeMap<>(LOOSE_LAST),
                        Collectors.toList()));
        return places.entrySet().stream()
                .map(place -> row(place.getKey(), place.getValue()))
                .toList();
    }

    private BagRow row(Place place, List<Item> items) {
        Part part = items.get(0).part();
        BigDecimal quantity = items.stream().map(Item::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
        return new BagRow(
                place.bag(),
                part,
                place.piece().finish(),
                quantity,
                spares.inBag(part, quantity),
                shown.of(items.stream().flatMap(Item::all).map(Item::part)));
    }
}
