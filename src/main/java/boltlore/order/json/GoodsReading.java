package boltlore.order.json;

import boltlore.catalogue.ShippedBattery;
import boltlore.catalogue.Transport;
import boltlore.json.KeyRule;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import boltlore.order.Extra;
import boltlore.order.ExtraGoods;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads what an order says of a one-off as goods in carriage: what dangerous goods it is, or that it is none. */
final class GoodsReading {

    private static final KeyRule NONE_OR_MARKED = new KeyRule.OneWay("none", "un");
    private static final List<String> OF_A_BATTERY = List.of("strongCase", "smallRun", "testSummary", "chargePercent");
    private static final List<KeyRule> ONLY_OF_MARKED = List.of(
            new KeyRule.Needs("class", "un"),
            new KeyRule.Needs("wattHours", "un"),
            new KeyRule.Needs("netKg", "un"),
            new KeyRule.Needs("strongCase", "un"),
            new KeyRule.Needs("smallRun", "un"),
            new KeyRule.Needs("testSummary", "un"),
            new KeyRule.Needs("chargePercent", "un"));

    private GoodsReading() {}

    static ExtraGoods goods(ObjectReader reader) {
        if (reader.breaks(NONE_OR_MARKED)) {
            String found = reader.has("un") ? "'none' and 'un'" : "neither 'none' nor 'un'";
            reader.fault(found, "either the 'un' number of dangerous goods, or 'none': true", "");
        }
        boolean stray = ONLY_OF_MARKED.stream().map(reader::breaks).toList().contains(true);
        if (stray && reader.has("none")) {
            reader.fault("'none' beside what only dangerous goods have", "'none' alone, or a 'un' number", "");
        }
        Boolean none = reader.findTruth("none");
        if (none != null && !none) {
            reader.faultAt("none", "false", "true, or the 'un' number in its place", "");
        }
        String un = reader.findText("un", TextShape.UN_NUMBER).orElse("");
        Transport transport = new Transport(
                un,
                reader.findText("class", TextShape.LINE).orElse(null),
                reader.findDecimal("wattHours", Range.POSITIVE));
        BigDecimal netKg = reader.findDecimal("netKg", Range.POSITIVE);
        ShippedBattery battery = battery(reader);
        return un.isEmpty() ? ExtraGoods.HARMLESS : new ExtraGoods(transport, netKg, battery);
    }

    private static @Nullable ShippedBattery battery(ObjectReader reader) {
        ShippedBattery battery = new ShippedBattery(
                ShippedBattery.NO_PART,
                reader.truth("strongCase", false),
                reader.truth("smallRun", false),
                reader.findText("testSummary", TextShape.LINE).orElse(""),
                reader.findDecimal("chargePercent", Range.between(0, 100)));
        return OF_A_BATTERY.stream().anyMatch(reader::has) ? battery : null;
    }

    /** Dangerous goods whose mass nobody knows would count nothing. */
    static void check(Extra extra, ObjectReader reader) {
        ExtraGoods goods = extra.goods();
        if (goods == null) {
            return;
        }
        if (extra.part() != null) {
            reader.faultAt("goods", "'goods' for a part", "only for a one-off: a part has its own", "Leave it out.");
        } else if (goods.transport() != null && extra.massKg() == null) {
            reader.fault(
                    "dangerous goods (" + goods.transport().un() + ") without 'massKg'",
                    "the mass of one, on which points and crates rest",
                    "Add 'massKg'.");
        } else if (goods.netKg() != null
                && extra.massKg() != null
                && goods.netKg().compareTo(extra.massKg()) > 0) {
            reader.fault(
                    "'netKg' above 'massKg'",
                    "at most the mass of one, " + extra.massKg().toPlainString() + " kg",
                    "Check both.");
        }
    }
}
