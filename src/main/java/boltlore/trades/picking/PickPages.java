package boltlore.trades.picking;

import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import boltlore.catalogue.Tracked;
import boltlore.explanation.FindingWords;
import boltlore.measure.Digits;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.KitInWork;
import boltlore.trades.picking.PickColumns.Handed;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The tables that are picked from, and the pages of what does not lie in the bins. */
final class PickPages {

    private static final String OUTSIDE =
            "The order asks for these beside the kit. Not part of the checked kit: fit not confirmed.";
    private static final String UNDECIDED = "These brackets support nothing in this kit, and nobody has decided yet"
            + " whether they are left out or kept. The quantities come on top of those on the other pages.";

    private record Serial(PickRow row, int piece) {}

    private static final TableSpec<Serial> SERIALS = TableSpec.<Serial>named("serials")
            .text("part", "Part", serial -> serial.row().part().number().text())
            .text("name", "Name", serial -> serial.row().part().name().english())
            .text(
                    "piece",
                    "Piece",
                    serial -> serial.piece() + " of " + serial.row().quantity().intValue())
            .box(Column.blank("number", "Serial number"))
            .box(Column.tick("secondCount", "2nd count"));

    private static final int REVISION_SHOWN = 8;

    private final KitInWork kit;
    private final PickColumns columns;

    PickPages(KitInWork kit, PickColumns columns) {
        this.kit = kit;
        this.columns = columns;
    }

    /** 'Order BL-1001 · Some Customer · pick list · catalogue 1a2b3c4d': what a sheet is when it has left its pile. */
    String footer(String page) {
        String revision = kit.catalogue().revision();
        String shown = revision.substring(0, Math.min(REVISION_SHOWN, revision.length()));
        return String.join(" · ", "Order " + kit.order().name(), kit.order().customer(), page, "catalogue " + shown);
    }

    private PageBuilder titled(String name, String title, String footer) {
        return Page.named(name)
                .footer(footer(footer))
                .title(title + ", " + kit.order().name());
    }

    /** What comes from the bins, in walking order. */
    TableBuilder walk(List<PickRow> rows) {
        TableSpec<PickRow> spec =
                columns.<PickRow>of("bins", "Bin", true, Handed::of).text("stages", "For", 22, this::byStage);
        or(spec, rows, PickRow::part);
        PickColumns.cautions(spec, 18, PickRow::cautions);
        spec.column(Column.blank("number", "Serial or lot"), row -> Cell.of(number(row)));
        return PickColumns.boxes(spec).of(rows);
    }

    /** What is fetched from coating, finish by finish. */
    PageBuilder fromCoating(List<CoatedRow> rows) {
        TableSpec<CoatedRow> spec = columns.<CoatedRow>of(
                        "from-coating", "Bin, once coated", false, coated -> Handed.of(coated.row()))
                .text("stages", "For", 22, coated -> byStage(coated.row()));
        or(spec, rows, coated -> coated.row().part());
        PickColumns.cautions(spec, 18, coated -> coated.row().cautions()).box(Column.blank("batch", "Batch"));
        TableBuilder table = PickColumns.boxes(spec).empty();
        String finish = "";
        for (CoatedRow coated : rows) {
            if (!coated.row().finish().equals(finish)) {
                finish = coated.row().finish();
                String from = coated.coatedAt().isEmpty() ? "our own oven" : coated.coatedAt();
                table.group(finish, finish(finish) + ", from " + from);
            }
            spec.add(table, "", coated);
        }
        return titled("From coating", "From coating", "from coating")
                .landscape()
                .add(table)
                .signatures("Picked by", "Second count by");
    }

    /** What may be picked where a part is short; no column where nothing may. */
    private <R> void or(TableSpec<R> spec, List<R> rows, Function<R, Part> part) {
        if (rows.stream().anyMatch(row -> !part.apply(row).upkeep().alternates().isEmpty())) {
            spec.text("or", "Or", 30, row -> Alternates.says(part.apply(row), kit.catalogue()));
        }
    }

    /** What the order asks for beside the universal kit. */
    PageBuilder extras(List<ExtraRow> rows) {
        TableSpec<ExtraRow> spec = columns.<ExtraRow>of("outside-the-kit", "Bin", false, Handed::of)
                .text("supplier", "Supplied by", row -> row.extra().suppliedByCustomer() ? "customer" : "us")
                .text("reason", "Why", 40, row -> row.extra().reason());
        PickColumns.cautions(spec, 18, ExtraRow::cautions);
        return titled("Outside the kit", "Outside the universal kit", "outside the kit")
                .landscape()
                .note(OUTSIDE)
                .add(PickColumns.boxes(spec).of(rows))
                .signatures("Picked by", "Second count by");
    }

    /** What waits for a decision; it has no box to tick, so that nobody picks it. */
    PageBuilder onHold(List<OnHold> rows) {
        FindingWords words = new FindingWords(kit.family());
        TableBuilder table = columns.<OnHold>of("on-hold", "Bin", false, Handed::of)
                .text("finish", "Finish", held -> finish(held.finish()))
                .text(
                        "brackets",
                        "Belongs to",
                        44,
                        held -> held.brackets().stream()
                                .map(bracket -> words.line(bracket.text()).english())
                                .collect(Collectors.joining(", ")))
                .of(rows);
        return titled("On hold", "On hold", "on hold")
                .landscape()
                .caution("Do not pick until decided", UNDECIDED)
                .add(table)
                .signatures("Decided by");
    }

    /** A line for each piece of those parts of which several come, each with a serial number of its own. */
    PageBuilder serials(List<PickRow> rows) {
        List<Serial> pieces = rows.stream()
                .flatMap(row ->
                        IntStream.rangeClosed(1, row.quantity().intValue()).mapToObj(piece -> new Serial(row, piece)))
                .toList();
        return titled("Serials", "Serial numbers", "serial numbers")
                .add(SERIALS.of(pieces))
                .signatures("Picked by", "Second count by");
    }

    /** The second count of one fit stage, bag by bag. */
    PageBuilder bags(BagPage bags) {
        String stage = kit.workshop().stageSays(bags.stage(), "en");
        TableSpec<BagRow> spec = TableSpec.<BagRow>named("bags")
                .text("part", "Part", row -> row.part().number().text())
                .text("finish", "Finish", 16, row -> finish(row.finish()))
                .text("name", "Name", row -> row.part().name().english());
        columns.amounts(spec, true, Handed::of);
        PickColumns.cautions(spec, 12, BagRow::cautions)
                .box(Column.blank("counted", "Counted"))
                .box(Column.blank("short", "Short"));
        TableBuilder table = spec.empty().about("stage", bags.stage());
        String bag = null;
        for (BagRow packed : bags.rows()) {
            if (!packed.bag().equals(bag)) {
                bag = packed.bag();
                table.group(bag.isEmpty() ? "loose" : bag, bag.isEmpty() ? "Loose, in no bag" : labelled(bag));
            }
            spec.add(table, "", packed);
        }
        return titled("Bags " + bags.stage(), stage + ": second count", "second count, " + stage)
                .add(table)
                .signatures("Second count by", "Bags closed by");
    }

    /** What the customer's papers call the bag: that is written on it. */
    private String labelled(String bag) {
        return kit.catalogue()
                .shipping()
                .bagSays(bag, kit.workshop(), kit.order().language());
    }

    private String finish(String name) {
        Finish finish = kit.catalogue().finishes().get(name);
        return finish == null ? name : finish.says().english();
    }

    /** 'front 4, cabin 8'. */
    private String byStage(PickRow row) {
        return row.byStage().stream()
                .map(at -> kit.workshop().stageSays(at.stage(), "en") + " " + Digits.plain(at.quantity()))
                .collect(Collectors.joining(", "));
    }

    /** What stands in the number box before anybody writes into it. */
    private static String number(PickRow row) {
        Tracked tracked = row.part().tracked();
        if (tracked == null) {
            return "–";
        }
        return tracked == Tracked.LOT ? "lot" : PickColumns.needsSerialsPage(row) ? "see Serials" : "no.";
    }
}
