package boltlore.trades.picking;

import boltlore.bill.Item;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import boltlore.explanation.FindingWords;
import boltlore.measure.Digits;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.report.Words;
import boltlore.trades.KitInWork;
import boltlore.trades.picking.PickColumns.Handed;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The tables that are picked from, and the pages of what does not lie in the bins. */
final class PickPages {

    private static final String OUTSIDE =
            "The order asks for these beside the kit. Not part of the checked kit: fit not confirmed.";
    private static final String UNDECIDED = "These brackets support nothing in this kit, and nobody has decided yet"
            + " whether they are left out or kept. The quantities come on top of those on the other pages.";

    private static final TableSpec<String> BATCHES = TableSpec.<String>named("batch-numbers")
            .text("finish", "Finish", 30, finish -> finish)
            .box(Column.blank("batch", "Batch").atMost(24));

    private static final String REUSED =
            "Inspect each one as it comes off the vehicle. One that fails is ordered new before the kit"
                    + " is fitted; never refit what is doubtful.";

    private static final TableSpec<Item> REUSED_PARTS = TableSpec.<Item>named("reused")
            .text("part", "Part", item -> item.part().number().text())
            .said("name", "Name", 30, item -> item.part().name())
            .said("position", "For", 22, item -> item.position().says())
            .quantity("quantity", "Quantity", "", Item::quantity)
            .text("unit", "Unit", item -> item.part().unit())
            .said("inspect", "Look at", 50, item -> item.part().upkeep().inspect())
            .box(Column.tick("fit", "Good to refit"));

    private static final int REVISION_SHOWN = 8;

    private final KitInWork kit;
    private final PickColumns columns;
    private final Words words;

    PickPages(KitInWork kit, PickColumns columns) {
        this.kit = kit;
        this.columns = columns;
        this.words = kit.words(PickPages.class);
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
                columns.<PickRow>of("bins", "Bin", true, Handed::of).text("stages", "For", 40, this::byStage);
        PickColumns.scan(PickColumns.cautions(spec, 12, PickRow::cautions), PickRow::part)
                .box(Column.tick("picked", "OK"));
        columns.beside(spec, Handed::of);
        or(spec, rows, PickRow::part);
        return spec.of(rows);
    }

    /** What is fetched from coating, finish by finish. */
    PageBuilder fromCoating(List<CoatedRow> rows) {
        boolean counted =
                rows.stream().noneMatch(coated -> Handed.of(coated.row()).isMeasured());
        TableSpec<CoatedRow> spec = (counted ? columns.counted() : columns)
                .<CoatedRow>of("from-coating", "Bin, once coated", false, coated -> Handed.of(coated.row()))
                .text("stages", "For", 22, coated -> byStage(coated.row()));
        PickColumns.scan(
                        PickColumns.cautions(spec, 12, coated -> coated.row().cautions()),
                        coated -> coated.row().part())
                .box(Column.tick("picked", "OK"));
        columns.beside(spec, coated -> Handed.of(coated.row()));
        or(spec, rows, coated -> coated.row().part());
        TableBuilder table = spec.empty();
        Map<String, String> finishes = new LinkedHashMap<>();
        for (CoatedRow coated : rows) {
            if (!finishes.containsKey(coated.row().finish())) {
                String finish = coated.row().finish();
                String from = coated.coatedAt().isEmpty() ? "our own oven" : coated.coatedAt();
                finishes.put(finish, finish(finish) + ", from " + from);
                table.group(finish, finish(finish) + ", from " + from);
            }
            spec.add(table, "", coated);
        }
        return titled("From coating", "From coating", "from coating")
                .add(table)
                .heading("Batches")
                .add(BATCHES.of(finishes.values()).inPairs())
                .signatures("Picked by");
    }

    /** What may be picked where a part is short; no column where nothing may. */
    private <R> void or(TableSpec<R> spec, List<R> rows, Function<R, Part> part) {
        if (rows.stream().anyMatch(row -> hasAlternate(part.apply(row)))) {
            spec.text("or", "Or", 30, row -> Alternates.says(part.apply(row), kit.catalogue()));
        }
    }

    /** The same by itself, for paper: few parts have any. */
    void alternates(PageBuilder page, List<PickRow> rows) {
        List<PickRow> some =
                rows.stream().filter(row -> hasAlternate(row.part())).toList();
        if (!some.isEmpty()) {
            page.heading("Where one is short")
                    .add(TableSpec.<PickRow>named("alternates")
                            .text("part", "Part", row -> row.part().number().text())
                            .text("or", "Or", 70, row -> Alternates.says(row.part(), kit.catalogue()))
                            .of(some));
        }
    }

    private static boolean hasAlternate(Part part) {
        return !part.upkeep().alternates().isEmpty();
    }

    /** Lines for what is not there, to be written down. */
    static TableBuilder shortOf() {
        return TableSpec.<Integer>named("short")
                .box(Column.blank("part", "Part that is short").atMost(24))
                .box(Column.blank("short", "How many").atMost(12))
                .box(Column.blank("instead", "Taken instead").atMost(24))
                .box(Column.blank("note", "Remark").atMost(30))
                .of(List.of(1, 2, 3, 4));
    }

    /** What the order asks for beside the universal kit. */
    PageBuilder extras(List<ExtraRow> rows) {
        TableSpec<ExtraRow> spec = columns.<ExtraRow>of("outside-the-kit", "Bin", false, Handed::of)
                .text("supplier", "Supplied by", row -> row.extra().suppliedByCustomer() ? "customer" : "us")
                .text("reason", "Why", 40, row -> row.extra().reason());
        PickColumns.cautions(spec, 18, ExtraRow::cautions);
        return titled("Outside the kit", "Outside the universal kit", "outside the kit")
                .note(OUTSIDE)
                .add(columns.beside(spec.box(Column.tick("picked", "OK")), Handed::of)
                        .of(rows))
                .signatures("Picked by", "Second count by");
    }

    /** What goes back in from the base vehicle: looked at where it comes off, and never picked. */
    PageBuilder reused(List<Item> items) {
        return titled("From the vehicle", "From the base vehicle, goes back in", "from the vehicle")
                .landscape()
                .note(REUSED)
                .add(REUSED_PARTS.of(items))
                .signatures("Inspected by");
    }

    /** What waits for a decision; it has no box to tick, so that nobody picks it. */
    PageBuilder onHold(List<OnHold> rows) {
        FindingWords words = new FindingWords(kit.family());
        TableSpec<OnHold> spec = columns.<OnHold>of("on-hold", "Bin", false, Handed::of)
                .text("finish", "Finish", 16, held -> finish(held.finish()))
                .text(
                        "brackets",
                        "Belongs to",
                        30,
                        held -> held.brackets().stream()
                                .map(bracket -> kit.says(words.line(bracket.text())))
                                .collect(Collectors.joining(", ")));
        TableBuilder table = columns.beside(spec, Handed::of).of(rows);
        return titled("On hold", "On hold", "on hold")
                .caution("Do not pick until decided", UNDECIDED)
                .add(table)
                .signatures("Decided by");
    }

    /** A line for each piece that has a serial number of its own, and for each part that has a lot. */
    PageBuilder serials(List<Numbered> rows) {
        PageBuilder page = titled("Serials", "Serial and lot numbers", "serial numbers");
        return Serials.on(page, rows).signatures("Picked by", "Second count by");
    }

    /** The second count of all fit stages, bag by bag: what must lie in the bag, spares included, and a box to tick. */
    PageBuilder bags(List<BagPage> stages) {
        PageBuilder page = titled("Second count", "Second count, bag by bag", "second count")
                .note(
                        "Count each bag again before it is closed, and tick. The count is what must lie in the bag, spares"
                                + " included. Parts that lie loose are counted too. Names stand on the pick list.");
        for (BagPage stage : stages) {
            page.heading(kit.workshop().stageSays(stage.stage(), language()));
            page.add(bagTable(stage));
        }
        return page.signatures("Second count by", "Bags closed by");
    }

    private TableBuilder bagTable(BagPage stage) {
        TableSpec<BagRow> spec = TableSpec.<BagRow>named("bags")
                .text("in-bag", "In bag", 9, row -> columns.taken(Handed.of(row)))
                .text("which", "Part", row -> which(row, stage))
                .box(Column.tick("counted", "OK"))
                .besideThePaper()
                .text("part", "Number", row -> row.part().number().text());
        columns.amounts(spec, true, Handed::of);
        columns.beside(spec, Handed::of)
                .said("name", "Name", Column.USUAL_WIDEST, row -> row.part().name())
                .text("finish", "Finish", 16, row -> finish(row.finish()));
        PickColumns.cautions(spec, 12, BagRow::cautions);
        TableBuilder table = spec.empty().inFours().about("stage", stage.stage());
        String bag = null;
        for (BagRow packed : stage.rows()) {
            if (!packed.bag().equals(bag)) {
                bag = packed.bag();
                table.group(bag.isEmpty() ? "loose" : bag, bag.isEmpty() ? "Loose, in no bag" : labelled(bag));
            }
            spec.add(table, "", packed);
        }
        return table;
    }

    /** The part's number, with its finish where the bag holds it in another too. */
    private String which(BagRow row, BagPage stage) {
        String number = row.part().number().text();
        boolean alone = stage.rows().stream()
                .noneMatch(other -> other.part().number().equals(row.part().number())
                        && other.bag().equals(row.bag())
                        && !other.finish().equals(row.finish()));
        return alone ? number : number + ", " + (row.finish().isEmpty() ? "bare" : finish(row.finish()));
    }

    /** What the customer's papers call the bag: that is written on it. */
    private String labelled(String bag) {
        return kit.catalogue()
                .shipping()
                .bagSays(bag, kit.workshop(), kit.order().language());
    }

    private String language() {
        return kit.workshop().language();
    }

    private String finish(String name) {
        Finish finish = kit.catalogue().finishes().get(name);
        return finish == null ? name : kit.says(finish.says());
    }

    /** 'Front 4, Cabin 8, spares 1': all that is taken, for whoever adds it up. */
    private String byStage(PickRow row) {
        Stream<String> stages = row.byStage().stream()
                .map(at -> kit.workshop().stageSays(at.stage(), language()) + " "
                        + words.number(Digits.plain(at.quantity())));
        Stream<String> spares =
                row.spares().signum() > 0 ? Stream.of("spares " + Digits.plain(row.spares())) : Stream.empty();
        return Stream.concat(stages, spares).collect(Collectors.joining(", "));
    }
}
