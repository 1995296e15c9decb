package boltlore.trades.cutting.packing;

import java.util.Arrays;

/**
 * A linear program in standard form, solved column by column: least cost, every row met, no column below 0. Revised
 * simplex method with the inverse of the basis kept whole, as in any textbook of linear programming.
 */
final class Simplex {

    static final double TINY = 1e-9;

    /** What one unit of it adds to each row, and costs. */
    static final class Column {

        private final double[] entries;
        private final double cost;

        Column(double[] entries, double cost) {
            this.entries = entries;
            this.cost = cost;
        }
    }

    private final Column[] basis;
    private final double[] amounts;
    private final double[][] inverse;

    /** @param basis column i has an entry in row i alone, of the same sign as the row's demand */
    Simplex(Column[] basis, double[] demand) {
        this.basis = basis.clone();
        this.amounts = new double[demand.length];
        this.inverse = new double[demand.length][demand.length];
        for (int i = 0; i < demand.length; i++) {
            inverse[i][i] = 1 / basis[i].entries[i];
            amounts[i] = demand[i] * inverse[i][i];
        }
    }

    /** What one unit of each row's demand costs at present. */
    double[] prices() {
        double[] prices = new double[amounts.length];
        for (int i = 0; i < amounts.length; i++) {
            if (basis[i].cost != 0) {
                addTo(prices, basis[i].cost, inverse[i]);
            }
        }
        return prices;
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
            if (change[i] > TINY && (leaving < 0 || leavesBefore(i, leaving, change))) {
                leaving = i;
            }
        }
        if (leaving >= 0) {
            pivot(leaving, change);
            basis[leaving] = column;
        }
    }

    private boolean leavesBefore(int i, int other, double[] change) {
        double mine = amounts[i] / change[i];
        double its = amounts[other] / change[other];
        return mine < its - TINY || (mine <= its + TINY && change[i] > change[other]);
    }

    private double[] changeBy(Column column) {
        double[] change = new double[amounts.length];
        for (int i = 0; i < change.length; i++) {
            for (int j = 0; j < change.length; j++) {
                change[i] += inverse[i][j] * column.entries[j];
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

    Column column(int row) {
        return basis[row];
    }

    double amount(int row) {
        return amounts[row];
    }
}
