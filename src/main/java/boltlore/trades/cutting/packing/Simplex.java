package boltlore.trades.cutting.packing;

import java.util.Arrays;

/**
 * A linear program in standard form, solved column by column: least cost, every row met, no column below 0. Revised
 * simplex method with the inverse of the basis kept whole, as in any textbook of linear programming.
 */
final class Simplex {

    static final double TINY = 1e-9;

    /** Prices are brought up to date at each step, and worked out anew after so many, before rounding adds up. */
    private static final int FRESH_AFTER = 50;

    /** After so many steps the inverse is worked out anew. */
    private static final int INVERT_AFTER = 1_000;

    /** A smaller entry is no good to divide by. */
    private static final double LEAST_PIVOT = 1e-6;

    private static final double TRACE = 1e-6;
    private static final double GOLDEN = 0.618_033_988_75;

    /** What one unit of it costs and adds to each row that it touches: the row's number and the amount. */
    static final class Column {

        private final int[] rows;
        private final double[] entries;
        private final double cost;

        Column(int[] rows, double[] entries, double cost) {
            this.rows = rows;
            this.entries = entries;
            this.cost = cost;
        }

        static Column single(int row, double entry, double cost) {
            return new Column(new int[] {row}, new double[] {entry}, cost);
        }

        double cost() {
            return cost;
        }

        /** The same at another cost. */
        Column at(double otherCost) {
            return new Column(rows, entries, otherCost);
        }

        /** What one unit saves: what the rows cost at those prices that it adds to, less its own cost. */
        double saving(double[] prices) {
            double saved = -cost;
            for (int i = 0; i < rows.length; i++) {
                saved += prices[rows[i]] * entries[i];
            }
            return saved;
        }
    }

    private final Column[] basis;
    private final double[] demand;
    private final double[] amounts;
    private final double[][] inverse;
    private double[] prices;
    private int steps;

    /** @param basis column i has an entry in row i alone, of the same sign as the row's demand */
    Simplex(Column[] basis, double[] demand) {
        this.basis = basis.clone();
        this.demand = demand.clone();
        this.amounts = new double[demand.length];
        this.inverse = new double[demand.length][demand.length];
        for (int i = 0; i < demand.length; i++) {
            inverse[i][i] = 1 / basis[i].entries[0];
            amounts[i] = lifted(i) * inverse[i][i];
        }
        prices = freshPrices();
    }

    /** What one unit of each row's demand costs at present. */
    double[] prices() {
        return prices;
    }

    /** What all demand costs at present prices. */
    double cost() {
        double cost = 0;
        for (int i = 0; i < demand.length; i++) {
            cost += prices[i] * demand[i];
        }
        return cost;
    }

    /** Each row asks for a trace more than it does, another for each: with no two steps alike none leads in a circle. */
    private double lifted(int row) {
        return demand[row] + TRACE * (1 + row * GOLDEN % 1);
    }

    private double[] freshPrices() {
        double[] fresh = new double[amounts.length];
        for (int i = 0; i < amounts.length; i++) {
            if (basis[i].cost != 0) {
                addTo(fresh, basis[i].cost, inverse[i]);
            }
        }
        return fresh;
    }

    private static void addTo(double[] sum, double times, double[] row) {
        for (int j = 0; j < sum.length; j++) {
            sum[j] += times * row[j];
        }
    }

    /** Takes the column into the basis in the place of the first one that it drives to 0; nothing where there is none. */
    void enter(Column column) {
        double[] change = changeBy(column);
        int leaving = -1;
        for (int i = 0; i < change.length; i++) {
            if (change[i] > LEAST_PIVOT && (leaving < 0 || leavesBefore(i, leaving, change))) {
                leaving = i;
            }
        }
        if (leaving >= 0) {
            double saving = column.saving(prices);
            pivot(leaving, change);
            basis[leaving] = column;
            addTo(prices, -saving, inverse[leaving]);
            if (++steps % INVERT_AFTER == 0) {
                invert();
            }
            prices = steps % FRESH_AFTER == 0 ? freshPrices() : prices;
        }
    }

    /** Works the inverse and the amounts out anew: rounding adds up over many steps. */
    private void invert() {
        double[][] rows = new double[basis.length][basis.length];
        for (int column = 0; column < basis.length; column++) {
            for (int i = 0; i < basis[column].rows.length; i++) {
                rows[basis[column].rows[i]][column] = basis[column].entries[i];
            }
            Arrays.fill(inverse[column], 0);
            inverse[column][column] = 1;
        }
        for (int column = 0; column < basis.length; column++) {
            eliminate(rows, column);
        }
        for (int i = 0; i < basis.length; i++) {
            double sum = 0;
            for (int j = 0; j < basis.length; j++) {
                sum += inverse[i][j] * lifted(j);
            }
            amounts[i] = Math.max(0, sum);
        }
    }

    /** One step of Gauss and Jordan, with the largest entry of the column to divide by. */
    private void eliminate(double[][] rows, int column) {
        int pivot = column;
        for (int row = column + 1; row < rows.length; row++) {
            pivot = Math.abs(rows[row][column]) > Math.abs(rows[pivot][column]) ? row : pivot;
        }
        swap(rows, pivot, column);
        swap(inverse, pivot, column);
        double by = 1 / rows[column][column];
        scale(rows[column], by);
        scale(inverse[column], by);
        for (int row = 0; row < rows.length; row++) {
            double times = rows[row][column];
            if (row != column && times != 0) {
                addTo(rows[row], -times, rows[column]);
                addTo(inverse[row], -times, inverse[column]);
            }
        }
    }

    private static void swap(double[][] rows, int one, int other) {
        double[] kept = rows[one];
        rows[one] = rows[other];
        rows[other] = kept;
    }

    private static void scale(double[] row, double by) {
        Arrays.setAll(row, j -> row[j] * by);
    }

    private boolean leavesBefore(int i, int other, double[] change) {
        double mine = amounts[i] / change[i];
        double its = amounts[other] / change[other];
        return mine < its - TINY || (mine <= its + TINY && change[i] > change[other]);
    }

    private double[] changeBy(Column column) {
        double[] change = new double[amounts.length];
        for (int i = 0; i < change.length; i++) {
            for (int j = 0; j < column.rows.length; j++) {
                change[i] += inverse[i][column.rows[j]] * column.entries[j];
            }
        }
        return change;
    }

    private void pivot(int leaving, double[] change) {
        double by = 1 / change[leaving];
        amounts[leaving] *= by;
        Arrays.setAll(inverse[leaving], j -> inverse[leaving][j] * by);
        for (int i = 0; i < change.length; i++) {
            if (i != leaving && change[i] != 0) {
                addTo(inverse[i], -change[i], inverse[leaving]);
                amounts[i] = Math.max(0, amounts[i] - change[i] * amounts[leaving]);
            }
        }
    }

    /** Puts the same column in at another cost. */
    void reprice(int row, Column column) {
        basis[row] = column;
        prices = freshPrices();
    }

    Column column(int row) {
        return basis[row];
    }

    double amount(int row) {
        return amounts[row];
    }
}
