package boltlore.trades.picking;

import boltlore.catalogue.Part;
import boltlore.order.Extra;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something on the order outside the universal kit.
 *
 * @param part its part, or null for a one-off that is only described
 * @param cautions codes of the part's cautions that stand on a picking list
 */
public record ExtraRow(Extra extra, @Nullable Part part, List<String> cautions) {

    public String bin() {
        return part == null || extra.suppliedByCustomer() ? "" : part.bin();
    }

    /** Its part's number, or what it is described as. */
    String name() {
        return part == null ? extra.says() : part.number().text();
    }
}
