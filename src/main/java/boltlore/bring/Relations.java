package boltlore.bring;

import boltlore.grid.Sheet;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How the numbers of a table's columns follow from one another, row by row: products of price and quantity, and sums. */
final class Relations {

    /** A total, the price and the quantity that it is the product of. */
    record Product(int total, int price, int quantity) {}

    private static final int FEWEST_ROWS = 3;
    private static final BigDecimal CENT = new BigDecimal("0.011");
    private static final BigDecimal PERCENT = new BigDecimal("0.002");

    private final boolean decimalComma;
    private final List<Sheet.Line> lines;
    private final Map<Integer, Map<Integer, BigDecimal>> numbers = new HashMap<>();

    Relations(Table table, boolean decimalComma) {
        this.decimalComma = decimalComma;
        this.lines = table.lines();
        table.columns().forEach(column -> numbers.put(column, numbers(column)));
    }

    private Map<Integer, BigDecimal> numbers(int column) {
        Map<Integer, BigDecimal> read = new HashMap<>();
        for (Sheet.Line line : lines) {
            Amount.of(line.cell(column), decimalComma)
                    .map(Amount::number)
                    .or(() -> Amount.money(line.cell(column), decimalComma))
                    .ifPresent(number -> read.put(line.number(), number));
        }
        return read;
    }

    @Nullable
    BigDecimal number(int row, int column) {
        return numbers.getOrDefault(column, Map.of()).get(row);
    }

    /** Whether total is price times quantity in nearly all rows that have the three, and not only because all are one. */
    boolean isProduct(int total, int price, int quantity) {
        int all = 0;
        int right = 0;
        int telling = 0;
        for (Sheet.Line line : lines) {
            BigDecimal sum = number(line.number(), total);
            BigDecimal each = number(line.number(), price);
            BigDecimal count = number(line.number(), quantity);
            if (sum != null && each != null && count != null && each.signum() != 0 && count.signum() != 0) {
                all++;
                boolean same = near(sum, each.multiply(count));
                right += same ? 1 : 0;
                telling += same && count.compareTo(BigDecimal.ONE) != 0 && each.compareTo(BigDecimal.ONE) != 0 ? 1 : 0;
            }
        }
        return all >= FEWEST_ROWS && right * 4 >= all * 3 && telling >= 2;
    }

    static boolean near(BigDecimal one, BigDecimal other) {
        BigDecimal apart = one.subtract(other).abs();
        return apart.compareTo(CENT) <= 0 || apart.compareTo(other.abs().multiply(PERCENT)) <= 0;
    }

    /** The product whose total is this column, if there is one among those prices and quantities. */
    Optional<Product> product(int total, List<Integer> prices, List<Integer> quantities) {
        return prices.stream()
                .filter(price -> price != total)
                .flatMap(price -> quantities.stream()
                        .filter(quantity -> quantity != total && !quantity.equals(price))
                        .map(quantity -> new Product(total, price, quantity)))
                .filter(product -> isProduct(product.total(), product.price(), product.quantity()))
                .findFirst();
    }

    /** Whether this column is the sum of those in nearly all rows in which one of them holds a number. */
    boolean isSum(int sum, List<Integer> shares) {
        int all = 0;
        int right = 0;
        for (Sheet.Line line : lines) {
            BigDecimal total = number(line.number(), sum);
            BigDecimal added = added(line.number(), shares);
            if (added != null && total != null) {
                all++;
                right += near(total, added) ? 1 : 0;
            }
        }
        return shares.size() >= 2 && all >= FEWEST_ROWS && right * 10 >= all * 8;
    }

    /** The sum of those cells of a row, or null where none of them holds a number. */
    @Nullable
    BigDecimal added(int row, List<Integer> columns) {
        return columns.stream()
                .map(column -> number(row, column))
                .filter(number -> number != null)
                .reduce(BigDecimal::add)
                .orElse(null);
    }

    /** Runs of neighbouring columns, each of them one of those. */
    static List<List<Integer>> runs(List<Integer> columns) {
        List<List<Integer>> runs = new ArrayList<>();
        for (int column : columns) {
            List<Integer> last = runs.isEmpty() ? List.of() : runs.get(runs.size() - 1);
            if (!last.isEmpty() && last.get(last.size() - 1) == column - 1) {
                last.add(column);
            } else {
                runs.add(new ArrayList<>(List.of(column)));
            }
        }
        return runs;
    }
}
