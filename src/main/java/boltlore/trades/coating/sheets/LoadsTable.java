package boltlore.trades.coating.sheets;

import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.coating.CureQueue;
import boltlore.trades.coating.OvenLoad;
import boltlore.trades.coating.Pass;
import boltlore.trades.coating.PowderRun;
import boltlore.trades.coating.PowderUse;
import boltlore.trades.coating.Timetable;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The loads of a run, with what is written down of each cure. */
final class LoadsTable {

    private static final List<Column> WHAT = List.of(
            Column.text("load", "Load"),
            Column.text("passes", "Of").atMost(22),
            Column.whole("pieces", "Pieces"),
            Column.decimal("area", "Area", 2).in("m²"),
            Column.decimal("mass", "Mass with hanging", 1).in("kg"),
            Column.whole("hooks", "Hooks"),
            Column.decimal("volume", "Volume", 0).in("l"),
            Column.decimal("issue", "Powder", 3).in("kg"),
            Column.text("probe-on", "Probe on").atMost(20));
    private static final Column DAY = Column.text("day", "Day");
    private static final List<Column> BY_HAND = List.of(
            Column.blank("in", "In at"),
            Column.blank("dwell", "Dwell from"),
            Column.blank("out", "Out at"),
            Column.blank("probe", "Highest metal").in("°C"),
            Column.signature("by", "Cured by"));

    private final PowderUse use;
    private final CoatJob job;
    private final Timetable timetable;

    private LoadsTable(PowderUse use, CoatJob job) {
        this.use = use;
        this.job = job;
        this.timetable = job.timetable();
    }

    static TableBuilder of(PowderRun run, PowderUse use, CoatJob job) {
        LoadsTable loads = new LoadsTable(use, job);
        TableBuilder table = Table.named("loads").columns(loads.columns());
        for (int i = 0; i < run.queues().size(); i++) {
            CureQueue queue = run.queues().get(i);
            table.group("queue-" + (i + 1), LoadWords.window(queue));
            queue.loads().forEach(load -> loads.fill(table.row(), load, queue));
        }
        return table;
    }

    private Column[] columns() {
        List<Column> columns = new ArrayList<>(WHAT);
        columns.addAll(timetable.known() ? List.of(DAY) : List.of());
        columns.addAll(BY_HAND);
        return columns.toArray(Column[]::new);
    }

    private void fill(RowBuilder cells, OvenLoad load, CureQueue queue) {
        cells.put("load", String.valueOf(load.number()))
                .put("passes", passes(load, queue))
                .put("pieces", load.pieces())
                .put("area", load.size().areaM2())
                .put("mass", load.size().kg())
                .put("hooks", load.size().hooks())
                .put("volume", load.size().litres())
                .put("issue", use.issueKg(load, queue))
                .put("probe-on", LoadWords.probe(load));
        if (timetable.known()) {
            cells.put("day", job.day(timetable.day(load.number())));
        }
    }

    private static String passes(OvenLoad load, CureQueue queue) {
        return load.rows().stream()
                .map(queue::passOf)
                .map((Pass pass) -> PowderRunsTable.pass(pass))
                .distinct()
                .sorted()
                .collect(Collectors.joining(", "));
    }
}
