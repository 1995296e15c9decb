package boltlore.report.xlsx;

/** Which columns of the grid each column of a block covers. */
final class Spans {

    private final int[] starts;

    /** @param starts where each column of the block starts, and after the last where it ends */
    Spans(int[] starts) {
        this.starts = starts;
    }

    int start(int i) {
        return starts[i];
    }

    int span(int i) {
        return span(i, i + 1);
    }

    /** Columns of the grid that the columns from one up to but not including another cover. */
    int span(int from, int to) {
        return starts[to] - starts[from];
    }
}
