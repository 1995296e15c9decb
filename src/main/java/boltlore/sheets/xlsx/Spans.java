package boltlore.sheets.xlsx;

import java.util.List;

/** Which columns of the grid each column of a block covers. */
record Spans(List<Integer> starts) {

    Spans {
        starts = List.copyOf(starts);
    }

    int start(int i) {
        return starts.get(i);
    }

    int span(int i) {
        return span(i, i + 1);
    }

    /** Columns of the grid that the columns from one up to but not including another cover. */
    int span(int from, int to) {
        return starts.get(to) - starts.get(from);
    }
}
