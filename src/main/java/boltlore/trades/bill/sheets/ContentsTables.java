package boltlore.trades.bill.sheets;

import boltlore.bill.Item;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.catalogue.Tracked;
import boltlore.report.Column;
import boltlore.report.Phrases;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.picking.BagPage;
import boltlore.trades.picking.BagRow;
import boltlore.trades.picking.ExtraRow;
import boltlore.trades.picking.OnHold;
import boltlore.trades.picking.ReusedTable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What is in the kit, by fit stage and bag, and the extras. */
final class ContentsTables {

    private final Catalogue catalogue;
    private final String language;
    private final Phrases phrases;

    ContentsTables(Catalogue catalogue, String language, Phrases phrases) {
        this.catalogue = catalogue;
        this.language = language;
        this.phrases = phrases;
    }

    TableBuilder parts(List<BagPage> bags) {
        TableSpec<BagRow> spec = spec();
        TableBuilder table = spec.empty().inPairs();
        for (BagPage page : bags) {
            String stage = catalogue.workshop().stageSays(page.stage(), language);
            page.rows().stream()
                    .collect(Collectors.groupingBy(BagRow::bag, LinkedHashMap::new, Collectors.toList()))
                    .forEach((bag, rows) -> {
                        table.group(page.stage() + "-" + bag, stage + " · " + bag(rows.get(0)));
                        rows.forEach(row -> spec.add(table, "", row));
                    });
        }
        return table;
    }

    private TableSpec<BagRow> spec() {
        return TableSpec.<BagRow>named("contents")
                .text(
                        "part",
                        phrases.say("part"),
                        12,
                        row -> row.part().number().text())
                .text("name", phrases.say("name"), 34, row -> row.part().name().in(language))
                .text("count", phrases.say("quantity"), 9, this::count)
                .box(Column.tick("checked", phrases.say("checked")))
                .besideThePaper()
                .text("bag", phrases.say("bag"), 20, this::bag)
                .text("finish", phrases.say("finish"), 18, row -> catalogue.finishSays(row.finish(), language))
                .quantity("quantity", phrases.say("quantity"), "", BagRow::quantity)
                .quantity(
                        "spares", phrases.say("spares"), "", row -> row.spares().signum() > 0 ? row.spares() : null)
                .text(
                        "unit",
                        phrases.say("unit"),
                        8,
                        row -> phrases.unit(row.part().unit(), row.quantity()))
                .text("tracked", phrases.say("tracked"), 8, this::tracked)
                .text("revision", phrases.say("rev"), 5, row -> row.part().revision())
                .code("bag-id", BagRow::bag)
                .code("finish-id", BagRow::finish);
    }

    /** '12 + 1' with a spare, '3.6 m' of what is measured. */
    private String count(BagRow row) {
        boolean piece = row.part().unit().equals("each");
        return phrases.number(row.quantity())
                + (row.spares().signum() > 0 ? " + " + phrases.number(row.spares()) : "")
                + (piece ? "" : " " + phrases.unit(row.part().unit(), row.quantity()));
    }

    /** A box for the number of each part that has one. */
    TableBuilder numbers(List<BagPage> bags) {
        return TableSpec.<BagRow>named("numbers")
                .text("part", phrases.say("part"), row -> row.part().number().text())
                .text("name", phrases.say("name"), 40, row -> row.part().name().in(language))
                .quantity("quantity", phrases.say("quantity"), "", BagRow::quantity)
                .box(Column.blank("tracked", phrases.say("tracked")).atMost(26))
                .of(bags.stream()
                        .flatMap(page -> page.rows().stream())
                        .filter(row -> row.part().tracked() == Tracked.SERIAL)
                        .toList())
                .inPairs();
    }

    private String bag(BagRow row) {
        return row.bag().isEmpty()
                ? phrases.say("loose")
                : catalogue.shipping().bagSays(row.bag(), catalogue.workshop(), language);
    }

    private @Nullable String tracked(BagRow row) {
        Tracked by = row.part().tracked();
        return by == null ? null : phrases.say(by == Tracked.SERIAL ? "serial" : "lot");
    }

    TableBuilder undecided(List<OnHold> onHold) {
        return TableSpec.<OnHold>named("undecided")
                .text("part", phrases.say("part"), held -> held.part().number().text())
                .text(
                        "name",
                        phrases.say("name"),
                        60,
                        held -> held.part().name().in(language))
                .text("finish", phrases.say("finish"), 24, held -> catalogue.finishSays(held.finish(), language))
                .quantity("quantity", phrases.say("quantity"), "", OnHold::quantity)
                .text(
                        "unit",
                        phrases.say("unit"),
                        held -> phrases.unit(held.part().unit(), held.quantity()))
                .of(onHold);
    }

    TableBuilder reused(List<Item> reused) {
        return ReusedTable.in(language, phrases)
                .box(Column.tick("checked", phrases.say("checked")))
                .of(reused);
    }

    TableBuilder extras(List<ExtraRow> extras) {
        return TableSpec.<ExtraRow>named("extras")
                .text("extra", phrases.say("extra"), 60, this::says)
                .quantity(
                        "quantity",
                        phrases.say("quantity"),
                        "",
                        row -> row.extra().quantity())
                .text(
                        "unit",
                        phrases.say("unit"),
                        row -> phrases.unit(row.extra().unit(), row.extra().quantity()))
                .text(
                        "supplied-by",
                        phrases.say("suppliedBy"),
                        row -> phrases.say(row.extra().suppliedByCustomer() ? "customerSupplies" : "us"))
                .box(Column.tick("checked", phrases.say("checked")))
                .of(extras);
    }

    private String says(ExtraRow row) {
        Part part = row.part();
        return part == null
                ? row.extra().says()
                : part.number() + " " + part.name().in(language);
    }
}
