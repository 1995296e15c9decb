package boltlore.trades.cutting;

import boltlore.catalogue.BarStock;
import boltlore.catalogue.Material;
import boltlore.trades.cutting.packing.CuttingPattern;
import boltlore.trades.cutting.packing.Ends;
import boltlore.trades.cutting.packing.Packer;
import boltlore.trades.cutting.packing.Packing;
import boltlore.trades.cutting.packing.PieceType;
import boltlore.trades.cutting.packing.Task;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Plans the bars of one material. */
final class MaterialPlanner {

    private record Alike(long length, Ends ends) {

        static final Comparator<Alike> LONGEST_FIRST = Comparator.comparingLong(Alike::length)
                .reversed()
                .thenComparing(alike -> alike.ends().slant())
                .thenComparing(alike -> alike.ends().single())
                .thenComparing(alike -> alike.ends().both());
    }

    private final Material material;
    private final BarStock stock;
    private final Sawing sawing;
    private final List<Remnant> remnants;
    private final SortedMap<Alike, Deque<PieceSet>> alike = new TreeMap<>(Alike.LONGEST_FIRST);
    private final List<PieceSet> tooLong = new ArrayList<>();
    private boolean parted;

    /**
     * @param sets in the order in which they are needed
     * @param remnants of the material
     */
    MaterialPlanner(Material material, List<PieceSet> sets, List<Remnant> remnants) {
        this.material = material;
        this.stock = Objects.requireNonNull(material.bars());
        this.sawing = new Sawing(stock, sets);
        this.remnants = remnants;
        sets.forEach(this::sort);
    }

    private void sort(PieceSet set) {
        List<PieceSet> parts = LongSets.parted(set, this::fits);
        parted |= parts.size() > 1;
        for (PieceSet part : parts) {
            if (fits(part)) {
                alike.computeIfAbsent(new Alike(sawing.length(part), sawing.ends(part)), any -> new ArrayDeque<>())
                        .add(part);
            } else {
                tooLong.add(part);
            }
        }
    }

    private boolean fits(PieceSet set) {
        BarLayout layout = layout(List.of(set));
        LaidPiece last = layout.pieces().get(layout.pieces().size() - 1);
        BigDecimal longest = BigDecimal.valueOf(stock.longest().lengthMm());
        return last.toMm().compareTo(longest.subtract(stock.saw().heldTailMm())) <= 0
                && load(set) <= sawing.room(longest);
    }

    private long load(PieceSet set) {
        Ends ends = sawing.ends(set);
        long exposed = ends.slant() < 0 ? 0 : 2 * sawing.exposure().get(ends.slant());
        return sawing.length(set) + exposed;
    }

    /** Sets of one piece that no bar holds. */
    List<PieceSet> tooLong() {
        return tooLong;
    }

    /**
     * @param firstNumber of its first bar
     * @param restName names the rest of a bar by the bar's number
     */
    MaterialCuts plan(int firstNumber, IntFunction<String> restName) {
        // The bars of a parted set must be of one heat, which remnants seldom are.
        BarStocks stocks = new BarStocks(stock, parted ? List.of() : remnants, sawing);
        Packing packing = Packer.pack(task(stocks));
        List<SawnBar> bars = new ArrayList<>();
        packing.bars().stream()
                .sorted(Comparator.comparingInt(CuttingPattern::stock))
                .forEach(bar ->
                        bars.add(bar(firstNumber + bars.size(), stocks.source(bar.stock()), sets(bar), restName)));
        return new MaterialCuts(material, tied(bars), BarStocks.cost(packing.bound()), unused(bars));
    }

    private Task task(BarStocks stocks) {
        List<PieceType> kinds = alike.entrySet().stream()
                .map(entry -> new PieceType(
                        entry.getKey().length(),
                        entry.getKey().ends(),
                        entry.getValue().size()))
                .toList();
        return new Task(kinds, stocks.stocks(), sawing.exposure(), sawing.lastCut(), sawing.keepFrom());
    }

    private List<PieceSet> sets(CuttingPattern bar) {
        List<PieceSet> sets = new ArrayList<>();
        int kind = 0;
        for (Map.Entry<Alike, Deque<PieceSet>> entry : alike.entrySet()) {
            for (int i = bar.of(kind); i > 0; i--) {
                sets.add(entry.getValue().remove());
            }
            kind++;
        }
        return sets;
    }

    private BarLayout layout(List<PieceSet> sets) {
        return BarLayout.of(sets, sawing, stock.saw().headTrimMm());
    }

    private SawnBar bar(int number, BarStocks.Source source, List<PieceSet> sets, IntFunction<String> restName) {
        BarLayout layout = layout(sets);
        BigDecimal rest = layout.restMm(source.lengthMm());
        boolean kept = rest.compareTo(stock.keepFromMm()) >= 0;
        return new SawnBar(
                number,
                source.remnant(),
                source.lengthMm(),
                source.cost(),
                layout.pieces(),
                rest,
                kept ? restName.apply(number) : "",
                new TreeSet<>());
    }

    private List<Remnant> unused(List<SawnBar> bars) {
        return remnants.stream()
                .filter(remnant -> bars.stream().noneMatch(bar -> remnant.equals(bar.remnant())))
                .sorted(Comparator.comparing(Remnant::name))
                .toList();
    }

    /** Bars that hold pieces of one part are told to be of one heat. */
    private static List<SawnBar> tied(List<SawnBar> bars) {
        Map<String, SortedSet<Integer>> byMark = new TreeMap<>();
        bars.forEach(bar -> marks(bar)
                .forEach(mark ->
                        byMark.computeIfAbsent(mark, any -> new TreeSet<>()).add(bar.number())));
        return bars.stream()
                .map(bar -> bar.withOneHeat(marks(bar)
                        .flatMap(mark -> byMark.getOrDefault(mark, new TreeSet<>()).stream())
                        .collect(Collectors.toCollection(TreeSet::new))))
                .toList();
    }

    private static Stream<String> marks(SawnBar bar) {
        return bar.pieces().stream().map(piece -> piece.set().mark()).distinct();
    }
}
