package boltlore.trades.shipping;

import boltlore.catalogue.CrateType;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Packs one load: into the smallest crate that takes all of it, else into as many large ones as it needs, bag by bag and
 * within a bag the heaviest first, each time into the first crate that still takes it (the first-fit rule of bin packing);
 * in the end each crate is changed for the smallest that takes what is in it.
 */
final class CratePacker {

    private static final Comparator<CrateType> SMALLEST = Comparator.comparing(
                    (CrateType type) -> type.outside().litres())
            .thenComparing(CrateType::tareKg)
            .thenComparing(CrateType::name);

    private final CrateCapacity capacity;
    private final List<CrateType> types;
    private final List<List<Packed>> open = new ArrayList<>();
    private final List<Packed> tooLarge = new ArrayList<>();

    /** A kind of crate and what lies in it. */
    record Filled(CrateType type, List<Packed> packed) {}

    /** Crates, and what goes into none of them. */
    record Result(List<Filled> crates, List<Packed> tooLarge) {}

    private CratePacker(CrateCapacity capacity, boolean dangerous) {
        this.capacity = capacity;
        this.types = capacity.shipping().crates().stream()
                .filter(type -> type.onlyDangerous() == dangerous)
                .sorted(SMALLEST)
                .toList();
    }

    static Result pack(CrateCapacity capacity, Load load, List<Goods> goods) {
        CratePacker packer = new CratePacker(capacity, load.dangerous());
        bags(goods).forEach(packer::bag);
        return new Result(packer.open.stream().map(packer::filled).toList(), List.copyOf(packer.tooLarge));
    }

    /** The heaviest bag first; what is in one load at several stages may have the same bag. */
    private static List<List<Packed>> bags(List<Goods> goods) {
        Map<String, List<Packed>> bags = new LinkedHashMap<>();
        goods.stream()
                .map(each -> new Packed(each, each.packed()))
                .forEach(each -> bags.computeIfAbsent(each.goods().bag(), bag -> new ArrayList<>())
                        .add(each));
        return bags.entrySet().stream()
                .sorted(Comparator.comparing((Map.Entry<String, List<Packed>> bag) -> kg(bag.getValue()))
                        .reversed()
                        .thenComparing(Map.Entry::getKey))
                .map(Map.Entry::getValue)
                .toList();
    }

    private static BigDecimal kg(List<Packed> packed) {
        return packed.stream().map(Packed::kg).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private void bag(List<Packed> bag) {
        if (!place(bag)) {
            bag.stream()
                    .flatMap(each -> Pieces.split(each).stream())
                    .sorted(Comparator.comparing(Packed::kg).reversed())
                    .forEach(this::piece);
        }
    }

    private void piece(Packed piece) {
        if (!place(List.of(piece))) {
            Pieces.add(tooLarge, piece);
        }
    }

    /** Into the first crate that takes all of these together, else into a new one. */
    private boolean place(List<Packed> some) {
        boolean beside = open.stream().anyMatch(crate -> joined(crate, some));
        boolean alone = !beside && smallest(some).isPresent();
        if (alone) {
            open.add(new ArrayList<>(some));
        }
        return beside || alone;
    }

    private boolean joined(List<Packed> crate, List<Packed> some) {
        List<Packed> with = new ArrayList<>(crate);
        some.forEach(each -> Pieces.add(with, each));
        boolean fits = smallest(with).isPresent();
        if (fits) {
            crate.clear();
            crate.addAll(with);
        }
        return fits;
    }

    private Optional<CrateType> smallest(List<Packed> all) {
        Optional<CrateType> roomy =
                types.stream().filter(type -> capacity.takes(type, all)).findFirst();
        return roomy.isPresent() || !Pieces.lone(all) ? roomy : largest(all);
    }

    /** One piece alone needs no room beside it: where its sides are not known, whether it goes in is seen at the crate. */
    private Optional<CrateType> largest(List<Packed> piece) {
        return types.stream().filter(type -> capacity.takesAlone(type, piece)).reduce((smaller, larger) -> larger);
    }

    private Filled filled(List<Packed> crate) {
        return new Filled(smallest(crate).orElseThrow(), List.copyOf(crate));
    }
}
