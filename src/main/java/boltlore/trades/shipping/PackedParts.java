package boltlore.trades.shipping;

import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import boltlore.catalogue.Tracked;
import boltlore.report.Column;
import boltlore.report.Phrases;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.picking.Numbered;
import boltlore.trades.picking.Numbered.Line;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which parts lie in which crate and bag, and how many: whoever receives or inspects the crates reads nothing else. */
final class PackedParts {

    /** A part with the crate that it lies in. */
    private record Lying(Crate crate, Packed packed) {}

    /** A line to write numbers on, with the crate whose pieces they are. */
    private record Written(Crate crate, Line line) {}

    private final Shipment shipment;
    private final Map<String, Finish> finishes;
    private final LoadWords words;
    private final Phrases phrases;

    PackedParts(Shipment shipment, Map<String, Finish> finishes, LoadWords words) {
        this.shipment = shipment;
        this.finishes = finishes;
        this.words = words;
        this.phrases = words.phrases();
    }

    /** Crate by crate, and in each bag by bag, what lies in no bag first. */
    TableBuilder byCrate() {
        TableSpec<Lying> spec = spec();
        TableBuilder table = spec.empty().inPairs();
        for (Crate crate : shipment.crates()) {
            String bag = null;
            for (CrateLot lot : CrateLot.of(crate)) {
                if (!lot.bag().equals(bag)) {
                    table.group("crate-" + crate.number() + "-" + lot.bag(), heading(crate, lot.bag(), bag == null));
                    bag = lot.bag();
                }
                lot.packed().forEach(packed -> spec.add(table, "", new Lying(crate, packed)));
            }
        }
        return table;
    }

    /** The crate with its size and masses over what lies first in it, else with no more than its number and stage. */
    private String heading(Crate crate, String bag, boolean first) {
        String says = first
                ? heading(shipment, crate, words)
                : phrases.say("crate") + " " + crate.number() + " · " + words.of(crate.load());
        if (bag.equals(crate.load().bag()) || (bag.isEmpty() && first)) {
            return says;
        }
        return says + " · " + (bag.isEmpty() ? phrases.say("loose") : words.bag(bag));
    }

    private TableSpec<Lying> spec() {
        return TableSpec.<Lying>named("crate-contents")
                .text("part", phrases.say("part"), 12, lying -> number(lying.packed()))
                .text("name", phrases.say("name"), 32, lying -> named(lying.packed()))
                .text("count", phrases.say("count"), 8, lying -> count(lying.packed()))
                .box(Column.tick("checked", phrases.say("checked")))
                .besideThePaper()
                .whole("crate", phrases.say("crate"), "", lying -> lying.crate().number())
                .text("finish", phrases.say("finish"), lying -> finish(goods(lying.packed())))
                .text("bag", phrases.say("bag"), lying -> words.bag(bag(lying)))
                .quantity(
                        "quantity",
                        phrases.say("quantity"),
                        "",
                        lying -> lying.packed().quantity())
                .text("unit", phrases.say("unit"), lying -> unit(lying.packed()))
                .decimal(
                        "mass",
                        phrases.say("mass"),
                        "kg",
                        2,
                        lying -> goods(lying.packed()).eachKg() == null
                                ? null
                                : lying.packed().kg())
                .code("bag-id", PackedParts::bag)
                .code("finish-id", lying -> goods(lying.packed()).finish());
    }

    /** A box for the number of each piece that has one of its own, as stores write it down: two in a line, parts with one apart. */
    List<TableBuilder> numbers() {
        Map<Boolean, List<Written>> lines = shipment.crates().stream()
                .flatMap(crate -> crate.packed().stream()
                        .flatMap(PackedParts::numbered)
                        .flatMap(Numbered::lines)
                        .map(line -> new Written(crate, line)))
                .collect(Collectors.partitioningBy(written -> written.line().isOne()));
        return Stream.of(ones().of(get(lines, true)).inPairs(), several().of(get(lines, false)))
                .filter(table -> !table.build().rows().isEmpty())
                .toList();
    }

    private static List<Written> get(Map<Boolean, List<Written>> lines, boolean one) {
        return lines.getOrDefault(one, List.of());
    }

    private static Stream<Numbered> numbered(Packed packed) {
        Part part = packed.goods().part();
        return part == null || part.tracked() != Tracked.SERIAL
                ? Stream.empty()
                : Stream.of(new Numbered(part, packed.quantity()));
    }

    /** Which piece lies in which crate. */
    private TableSpec<Written> written(String named, int nameWidth) {
        return TableSpec.<Written>named(named)
                .text(
                        "part",
                        phrases.say("part"),
                        12,
                        written -> written.line().of().part().number().text())
                .text(
                        "name",
                        phrases.say("name"),
                        nameWidth,
                        written -> written.line().of().part().name().in(words.language()))
                .whole(
                        "crate",
                        phrases.say("crate"),
                        "",
                        written -> written.crate().number());
    }

    private TableSpec<Written> ones() {
        return written("numbers", 14)
                .box(Column.blank("serial", phrases.say("serial")).atMost(26));
    }

    private TableSpec<Written> several() {
        return written("serials", 22)
                .text(
                        "piece",
                        phrases.say("piece"),
                        12,
                        written -> written.line().pieces() + " " + phrases.say("of") + " "
                                + written.line().of().numbers())
                .box(Column.blank("serial", phrases.say("serial")).atMost(26))
                .box(Column.blank("second", phrases.say("second")).atMost(26));
    }

    /** Number, content, outer size and masses. */
    static String heading(Shipment shipment, Crate crate, LoadWords words) {
        Phrases phrases = words.phrases();
        return phrases.say("crate") + " " + crate.number() + " " + phrases.say("of") + " "
                + shipment.crates().size() + " · " + words.of(crate.load()) + " · "
                + NumberFormats.size(crate.type().outside()) + " mm · " + phrases.say("netWord") + " "
                + words.kg(crate.netKg()) + " · " + phrases.say("grossWord") + " " + words.kg(crate.grossKg());
    }

    private static Goods goods(Packed packed) {
        return packed.goods();
    }

    private static String bag(Lying lying) {
        return lying.packed().goods().bag();
    }

    private String number(Packed packed) {
        Part part = packed.goods().part();
        return part == null ? "" : part.number().text();
    }

    private String named(Packed packed) {
        Part part = packed.goods().part();
        return part == null ? packed.goods().name() : part.name().in(words.language());
    }

    private String finish(Goods goods) {
        Finish finish = finishes.get(goods.finish());
        return finish == null ? goods.finish() : finish.says().in(words.language());
    }

    /** '12' of pieces, '12 + 1' where all of them lie together with a spare, '3.6 m' of what is measured. */
    private String count(Packed packed) {
        Goods goods = packed.goods();
        boolean spare = goods.spares().signum() > 0 && packed.quantity().compareTo(goods.packed()) == 0;
        String number = spare
                ? phrases.number(goods.quantity()) + " + " + phrases.number(goods.spares())
                : phrases.number(packed.quantity());
        return isPiece(packed) ? number : number + " " + unit(packed);
    }

    private static boolean isPiece(Packed packed) {
        return goods(packed).unit().equals("each");
    }

    private String unit(Packed packed) {
        return phrases.unit(packed.goods().unit(), packed.quantity());
    }
}
