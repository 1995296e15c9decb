package boltlore.catalogue;

import boltlore.measure.DeliveryTerm;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * On what terms the workshop sells, and what it declares to customs.
 *
 * @param payment when an invoice is due, for customers; null where nobody has said
 * @param delivery usual term of delivery, or null
 * @param customsValues by which a kit's price is shared out over customs lines
 */
public record SellingTerms(
        @Nullable Wording payment, @Nullable DeliveryTerm delivery, List<GoodsValue> customsValues) {

    public static final SellingTerms NONE = new SellingTerms(null, null, List.of());

    /**
     * What goods of a class are worth in the workshop's own list, which is made of no cost.
     *
     * @param hs first digits of the customs codes of the class; the longest that fits counts
     * @param perKg in the workshop's currency
     */
    public record GoodsValue(String hs, BigDecimal perKg) {

        boolean covers(String code) {
            return code.replace(".", "").startsWith(hs.replace(".", ""));
        }
    }

    /** The value of the class that the code belongs to, by its longest beginning; empty where no class covers it. */
    public Optional<GoodsValue> customsValue(String code) {
        return customsValues.stream()
                .filter(value -> value.covers(code))
                .max(Comparator.comparing(value -> value.hs().replace(".", "").length()));
    }
}
