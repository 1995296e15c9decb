package boltlore.report.xlsx;

import boltlore.report.Row;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Neighbouring rows of the grid, from the first to the last, that one range can name. */
record RowRun(int first, int last) {

    /** @param firstRow of the grid that the first of the rows stands in */
    static List<RowRun> of(List<Row> rows, int firstRow, Predicate<Row> counted) {
        List<RowRun> runs = new ArrayList<>();
        int start = -1;
        for (int i = 0; i <= rows.size(); i++) {
            boolean counts = i < rows.size() && counted.test(rows.get(i));
            if (counts && start < 0) {
                start = i;
            } else if (!counts && start >= 0) {
                runs.add(new RowRun(firstRow + start, firstRow + i - 1));
                start = -1;
            }
        }
        return runs;
    }

    /** The plain rows of a table by their groups, each group's as {@link #of} gives them. */
    static Map<String, List<RowRun>> plainByGroup(LaidTable table) {
        Map<String, List<RowRun>> byGroup = new HashMap<>();
        List<Row> rows = table.table().rows();
        for (int start = 0; start < rows.size(); start++) {
            String group = rows.get(start).group();
            int end = start;
            while (end < rows.size() && isPlainOf(rows.get(end), group)) {
                end++;
            }
            if (end > start) {
                RowRun run = new RowRun(table.firstRow() + start, table.firstRow() + end - 1);
                byGroup.computeIfAbsent(group, none -> new ArrayList<>()).add(run);
                start = end - 1;
            }
        }
        return byGroup;
    }

    private static boolean isPlainOf(Row row, String group) {
        return row.isPlain() && row.group().equals(group);
    }
}
