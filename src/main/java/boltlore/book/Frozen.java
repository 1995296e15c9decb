package boltlore.book;

import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;

/**
 * What a quotation stands on, each by the hash of its content, which the book keeps once however many orders share it.
 *
 * @param order the order's file, with the customer's key in the place of the name
 * @param kit resolved lines ({@link KitLine})
 * @param catalogue the list of the catalogue's files with the hash of each
 * @param figures the quotation in full, without any cost
 * @param cost what it costs the workshop
 * @param findings what the rules and all trades found of the kit; empty where an earlier program did not keep it
 * @param needs what the kit asks of the stores, and how long before it is due; empty likewise
 */
public record Frozen(
        String order, String kit, String catalogue, String figures, String cost, String findings, String needs) {

    public JsonOut.Members json() {
        return JsonOut.object()
                .put("order", order)
                .put("kit", kit)
                .put("catalogue", catalogue)
                .put("figures", figures)
                .put("cost", cost)
                .putIfAny("findings", findings)
                .putIfAny("needs", needs);
    }

    public static Frozen read(ObjectReader reader) {
        return new Frozen(
                reader.text("order"),
                reader.text("kit"),
                reader.text("catalogue"),
                reader.text("figures"),
                reader.text("cost"),
                reader.findText("findings").orElse(""),
                reader.findText("needs").orElse(""));
    }
}
