package boltlore.report.xlsx;

import boltlore.report.Block;
import boltlore.report.Page;
import boltlore.report.Table;
import boltlore.report.xlsx.LaidPage.Stretch;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Tables that go on as others with the same headings, where a sheet of paper ends within them. */
final class Divided {

    private Divided() {}

    /** With two tables where a sheet of paper ends within one that may be split. */
    static Page where(LaidPage laid) {
        PageBreaks breaks = PageBreaks.dividing(laid);
        List<Block> blocks = new ArrayList<>();
        for (Stretch stretch : laid.stretches()) {
            boolean repeated = breaks.repeated()
                    .filter(table -> table.table().equals(stretch.block()))
                    .isPresent();
            if (stretch.block() instanceof Table table && PageBreaks.splits(table) && !repeated) {
                int from = 0;
                for (int row : breaks.after()) {
                    if (row > stretch.first() && row < stretch.last()) {
                        blocks.add(part(table, from, row - stretch.first()));
                        from = row - stretch.first();
                    }
                }
                blocks.add(from == 0 ? table : part(table, from, table.rows().size()));
            } else {
                blocks.add(stretch.block());
            }
        }
        Page page = laid.page();
        return new Page(page.name(), page.language(), page.print(), blocks);
    }

    private static Table part(Table table, int from, int to) {
        Map<String, String> about = new LinkedHashMap<>(table.about());
        if (from > 0) {
            about.put("from-row", String.valueOf(from + 1));
        }
        return new Table(table.name(), about, table.columns(), table.rows().subList(from, to));
    }
}
