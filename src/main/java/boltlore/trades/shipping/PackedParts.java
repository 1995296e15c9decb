package boltlore.trades.shipping;

import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import boltlore.catalogue.Tracked;
import boltlore.report.Column;
import boltlore.report.Phrases;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Which parts lie in which crate and bag, and how many: whoever receives or inspects the crates reads nothing else. */
final class PackedParts {

    /** A part with the crate that it lies in. */
    private record Lying(Crate crate, Packed packed) {}

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
            String group = "crate-" + crate.number();
            table.group(group, heading(shipment, crate, words));
            String bag = crate.load().bag();
            for (CrateLot lot : CrateLot.of(crate)) {
                if (!lot.bag().equals(bag)) {
                    bag = lot.bag();
                    table.group(group + "-" + bag, bag.isEmpty() ? phrases.say("loose") : words.bag(bag));
                }
                lot.packed().forEach(packed -> spec.add(table, "", new Lying(crate, packed)));
            }
        }
        return table;
    }

    private TableSpec<Lying> spec() {
        return TableSpec.<Lying>named("crate-contents")
                .text("part", phrases.say("part"), 12, lying -> number(lying.packed()))
                .text("name", phrases.say("name"), 32, lying -> named(lying.packed()))
                .text("count", phrases.say("count"), 8, lying -> count(lying.packed()))
                .box(Column.tick("checked", phrases.say("checked")))
                .besideThePaper()
                .whole("crate", phrases.say("crate"), "", lying -> lying.crate().number())
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

    /** Whether any part has a number of its own. */
    boolean isNumbered() {
        return !numbered().isEmpty();
    }

    /** A box for the number of each part that has one. */
    TableBuilder numbers() {
        return TableSpec.<Packed>named("numbers")
                .text("part", phrases.say("part"), 12, this::number)
                .text("name", phrases.say("name"), 22, this::named)
                .quantity("quantity", phrases.say("count"), "", Packed::quantity)
                .box(Column.blank("serial", phrases.say("serial")).atMost(26))
                .of(numbered())
                .inPairs();
    }

    private List<Packed> numbered() {
        return shipment.crates().stream()
                .flatMap(crate -> crate.packed().stream())
                .filter(packed -> tracked(packed.goods().part()))
                .toList();
    }

    private static boolean tracked(@Nullable Part part) {
        return part != null && part.tracked() == Tracked.SERIAL;
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

    /** Name and finish. */
    private String named(Packed packed) {
        Goods goods = packed.goods();
        Part part = goods.part();
        Finish finish = finishes.get(goods.finish());
        String name = part == null ? goods.name() : part.name().in(words.language());
        String colour = finish == null ? goods.finish() : finish.says().in(words.language());
        return colour.isEmpty() ? name : name + ", " + colour;
    }

    /** '12' of pieces, '3.6 m' of what is measured. */
    private String count(Packed packed) {
        String number = phrases.number(packed.quantity());
        return isPiece(packed) ? number : number + " " + unit(packed);
    }

    private static boolean isPiece(Packed packed) {
        return goods(packed).unit().equals("each");
    }

    private String unit(Packed packed) {
        return phrases.unit(packed.goods().unit(), packed.quantity());
    }
}
