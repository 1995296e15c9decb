package boltlore.trades.bill.sheets;

import boltlore.report.Block;
import boltlore.report.Cell;
import boltlore.report.Formula;
import boltlore.report.Page;
import boltlore.report.Particulars;
import boltlore.report.Place;
import boltlore.report.Report;
import boltlore.report.Row;
import boltlore.report.Row.RowKind;
import boltlore.report.Table;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Works out a workbook's live sums from its plain cells alone, by the formulas' own meaning. */
final class WorkedOut {

    /** A live sum, where it stands, what it says it comes to and what it comes to. */
    record Sum(String where, BigDecimal told, BigDecimal worked) {
        boolean agrees() {
            return told.subtract(worked).abs().compareTo(new BigDecimal("0.0000001")) < 0;
        }
    }

    private final Report report;

    WorkedOut(Report report) {
        this.report = report;
    }

    List<Sum> sums() {
        List<Sum> sums = new ArrayList<>();
        for (Page page : report.pages()) {
            page.tables()
                    .forEach(table -> table.rows()
                            .forEach(row -> row.cells().stream()
                                    .filter(Cell.Worked.class::isInstance)
                                    .map(Cell.Worked.class::cast)
                                    .forEach(cell -> sums.add(sum(page, table, row, cell)))));
            page.particulars()
                    .forEach(says -> says.entries().stream()
                            .filter(entry -> entry.cell() instanceof Cell.Worked)
                            .forEach(entry -> sums.add(sum(page, says, null, (Cell.Worked) entry.cell()))));
        }
        return sums;
    }

    private Sum sum(Page page, Block block, @Nullable Row row, Cell.Worked cell) {
        String where = page.name() + " " + (row == null ? "" : row.words() + row.key()) + " " + cell.formula();
        return new Sum(where, cell.result(), new Scope(page, block, row).of(cell.formula()));
    }

    private final class Scope {

        private final Page page;
        private final Block block;
        private final @Nullable Row row;

        Scope(Page page, Block block, @Nullable Row row) {
            this.page = page;
            this.block = block;
            this.row = row;
        }

        BigDecimal of(Formula formula) {
            if (formula instanceof Formula.Fixed fixed) {
                return fixed.number();
            } else if (formula instanceof Formula.At at) {
                return at(at.place());
            } else if (formula instanceof Formula.Sum sum) {
                return sum.terms().stream().map(this::of).reduce(BigDecimal.ZERO, BigDecimal::add);
            } else if (formula instanceof Formula.Product product) {
                return product.factors().stream().map(this::of).reduce(BigDecimal.ONE, BigDecimal::multiply);
            } else if (formula instanceof Formula.Difference difference) {
                return of(difference.from()).subtract(of(difference.taken()));
            } else if (formula instanceof Formula.Quotient quotient) {
                return of(quotient.dividend()).divide(of(quotient.divisor()), MathContext.DECIMAL128);
            } else if (formula instanceof Formula.Rounded rounded) {
                return of(rounded.formula()).setScale(rounded.scale(), RoundingMode.HALF_UP);
            } else if (formula instanceof Formula.RoundedUp up) {
                return of(up.formula()).setScale(0, RoundingMode.UP);
            }
            return ofColumn(formula);
        }

        private BigDecimal ofColumn(Formula formula) {
            Table table = (Table) block;
            if (formula instanceof Formula.ColumnSum sum) {
                return add(
                        table,
                        sum.column(),
                        table.rows().stream()
                                .filter(Row::isPlain)
                                .filter(each ->
                                        sum.groups().isEmpty() || sum.groups().contains(each.group())));
            } else if (formula instanceof Formula.SubtotalSum sum) {
                return add(
                        table,
                        sum.column(),
                        table.rows().stream()
                                .filter(each -> each.kind() == RowKind.SUBTOTAL
                                        && !each.group().isEmpty()));
            }
            Formula.MatchSum match = (Formula.MatchSum) formula;
            String key = text(table, Objects.requireNonNull(row), match.keyColumn());
            String own = row.key();
            return add(
                    table,
                    match.column(),
                    table.rows().stream()
                            .filter(each -> !each.key().equals(own)
                                    && text(table, each, match.keyColumn()).equals(key)));
        }

        private BigDecimal add(Table table, String column, Stream<Row> rows) {
            return rows.map(each -> number(each.cells().get(table.column(column)), table, each))
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
        }

        private BigDecimal at(Place place) {
            Page on = place.page().isEmpty() ? page : report.page(place.page());
            if (place.block().isEmpty()) {
                Row own = Objects.requireNonNull(row);
                Table table = (Table) block;
                return number(own.cells().get(table.column(place.column())), table, own);
            }
            Scope there = new Scope(on, block(on, place.block()), null);
            if (there.block instanceof Particulars says) {
                return there.number(says.entries().stream()
                        .filter(entry -> entry.key().equals(place.row()))
                        .findFirst()
                        .orElseThrow()
                        .cell());
            }
            Table table = (Table) there.block;
            Row named = table.rows().get(table.row(place.row()));
            return there.number(named.cells().get(table.column(place.column())), table, named);
        }

        private BigDecimal number(Cell cell, Table table, Row own) {
            return new Scope(page, table, own).number(cell);
        }

        private BigDecimal number(Cell cell) {
            if (cell instanceof Cell.Worked worked) {
                return of(worked.formula());
            }
            return cell instanceof Cell.Figure figure ? figure.value() : BigDecimal.ZERO;
        }
    }

    private static Block block(Page page, String name) {
        return Stream.<Block>concat(
                        page.tables().filter(table -> table.name().equals(name)),
                        page.particulars().filter(says -> says.name().equals(name)))
                .findFirst()
                .orElseThrow();
    }

    private static String text(Table table, Row row, String column) {
        return row.cells().get(table.column(column)) instanceof Cell.Words words
                ? words.text().toLowerCase(Locale.ROOT)
                : "";
    }
}
