package boltlore.report;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Whether all that formulas and charts refer to is there; a slip in a sheet's make-up shows when it is built. */
final class References {

    private final List<Page> pages;

    private References(List<Page> pages) {
        this.pages = pages;
    }

    static void check(List<Page> pages) {
        new References(pages).checkAll();
    }

    private void checkAll() {
        for (Page page : pages) {
            page.tables().forEach(table -> checkTable(page, table));
            page.particulars().forEach(block -> checkParticulars(page, block));
            page.blocks().stream()
                    .filter(BarCharts.class::isInstance)
                    .flatMap(block -> ((BarCharts) block).charts().stream())
                    .forEach(chart -> checkChart(page, chart));
        }
    }

    private void checkTable(Page page, Table table) {
        for (Row row : table.rows()) {
            for (Cell cell : row.cells()) {
                if (cell instanceof Cell.Worked worked) {
                    check(page, table, row, worked.formula());
                }
            }
        }
    }

    private void checkParticulars(Page page, Particulars block) {
        for (Particular entry : block.entries()) {
            if (entry.cell() instanceof Cell.Worked worked) {
                check(page, block, null, worked.formula());
            }
        }
    }

    private void checkChart(Page page, BarChart chart) {
        Table table = table(page, chart.table());
        table.column(chart.labels());
        table.column(chart.values());
        if (table.rows().stream().noneMatch(Row::isPlain)) {
            throw new IllegalArgumentException("Chart '" + chart.title() + "' has no row to draw");
        }
    }

    private void check(Page page, Block block, @Nullable Row row, Formula formula) {
        formula.parts().forEach(part -> check(page, block, row, part));
        if (formula instanceof Formula.At at) {
            checkPlace(page, block, row, at.place());
        } else if (formula instanceof Formula.ColumnSum sum) {
            own(block).column(sum.column());
            sum.groups().forEach(group -> checkGroup(own(block), group));
        } else if (formula instanceof Formula.SubtotalSum sum) {
            own(block).column(sum.column());
        } else if (formula instanceof Formula.MatchSum sum) {
            Page where = page(page, sum.page());
            Table table = sum.table().isEmpty() ? own(block) : table(where, sum.table());
            table.column(sum.column());
            table.column(sum.keyColumn());
            checkPlace(page, block, row, sum.key());
        }
    }

    private void checkPlace(Page own, Block block, @Nullable Row row, Place place) {
        Page page = page(own, place.page());
        Block where = place.block().isEmpty() ? block : block(page, place.block());
        if (where instanceof Particulars particulars) {
            boolean there =
                    particulars.entries().stream().anyMatch(entry -> entry.key().equals(place.row()));
            if (!there || !place.column().equals(Particulars.VALUE)) {
                throw new IllegalArgumentException("No " + place + " in particulars '" + particulars.name() + "'");
            }
        } else if (where instanceof Table table) {
            table.column(place.column());
            if (!place.row().isEmpty()) {
                table.row(place.row());
            } else if (row == null || where != block) {
                throw new IllegalArgumentException(place + " names no row");
            }
        }
    }

    private static void checkGroup(Table table, String group) {
        if (!table.hasGroup(group)) {
            throw new IllegalArgumentException("Table '" + table.name() + "' has no group '" + group + "'");
        }
    }

    private Page page(Page own, String name) {
        return name.isEmpty()
                ? own
                : pages.stream()
                        .filter(page -> page.name().equals(name))
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException("No page '" + name + "'"));
    }

    private static Table own(Block block) {
        if (block instanceof Table table) {
            return table;
        }
        throw new IllegalArgumentException("Only a table has columns to sum");
    }

    private static Table table(Page page, String name) {
        return own(block(page, name));
    }

    private static Block block(Page page, String name) {
        return Stream.<Block>concat(page.tables(), page.particulars())
                .filter(block -> block instanceof Table table
                        ? table.name().equals(name)
                        : block instanceof Particulars particulars
                                && particulars.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("Page '" + page.name() + "' has no '" + name + "'"));
    }
}
