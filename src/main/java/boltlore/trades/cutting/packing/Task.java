package boltlore.trades.cutting.packing;

import java.util.List;

/**
 * What is to be packed into what. All lengths in one unit, whole numbers.
 *
 * @param kinds longest first
 * @param stocks at least one of them to be bought, with room for every kind
 * @param exposure for each slant, what an end takes up more when it lies against no other of its slant
 * @param lastCut what the cut after the last piece takes away
 * @param keepFrom shortest rest that is kept; what is shorter is scrap
 */
public record Task(List<PieceType> kinds, List<Stock> stocks, List<Long> exposure, long lastCut, long keepFrom) {

    public Task {
        kinds = List.copyOf(kinds);
        stocks = List.copyOf(stocks);
        exposure = List.copyOf(exposure);
        for (int i = 1; i < kinds.size(); i++) {
            if (kinds.get(i - 1).length() < kinds.get(i).length()) {
                throw new IllegalArgumentException("Kinds stand with the longest first");
            }
        }
    }

    int[] counts() {
        return kinds.stream().mapToInt(PieceType::count).toArray();
    }

    int pieces() {
        return kinds.stream().mapToInt(PieceType::count).sum();
    }

    Load empty() {
        return new Load(this);
    }

    /** What a bar can lose at its slanted ends at most. */
    long mostExposed() {
        return 2 * exposure.stream().mapToLong(Long::longValue).sum();
    }

    /** What bought bars must hold at least: all lengths, less what the bars at hand can hold. */
    long roomToBuy() {
        long room =
                kinds.stream().mapToLong(kind -> kind.length() * kind.count()).sum();
        return room
                - stocks.stream()
                        .filter(stock -> !stock.isBought())
                        .mapToLong(Stock::room)
                        .sum();
    }

    /** What is left of a bar after its last cut. */
    long rest(CuttingPattern bar) {
        return Math.max(0, stocks.get(bar.stock()).room() - load(bar) - lastCut);
    }

    long load(CuttingPattern bar) {
        Load load = empty();
        for (int kind = 0; kind < kinds.size(); kind++) {
            load.add(kind, bar.of(kind));
        }
        return load.total();
    }

    /** The rest, where it is too short to keep. */
    long scrap(CuttingPattern bar) {
        long rest = rest(bar);
        return rest < keepFrom ? rest : 0;
    }
}
