package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How the workshop packs and sends kits.
 *
 * @param customsUnion countries among which no customs papers are asked for (ISO 3166 alpha-2)
 * @param byRoad countries that lorries reach from the workshop, ferries on the way taken (ISO 3166 alpha-2); empty where
 *     nobody has said
 * @param usual crates that the price of a kit holds
 * @param fillPercent share of a crate's inner volume that parts may take up with their padding
 * @param litresPerKg room that a kilogram of parts without a size is given
 * @param sizes outer sizes of parts as they are packed
 * @param motors whose power decides their customs code
 */
public record Shipping(
        Consignor consignor,
        List<String> customsUnion,
        List<String> byRoad,
        List<CrateType> crates,
        List<OwnCrate> ownCrates,
        List<UsualCrate> usual,
        BigDecimal fillPercent,
        BigDecimal litresPerKg,
        Lifting lifting,
        Map<PartNumber, EnvelopeMm> sizes,
        Map<PartNumber, RatedMotor> motors,
        Map<PartNumber, ShippedBattery> batteries) {

    /** Of a workshop that says nothing about it. */
    public static final Shipping NONE = new Shipping(
            Consignor.UNKNOWN,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            BigDecimal.valueOf(60),
            BigDecimal.valueOf(3),
            Lifting.USUAL,
            Map.of(),
            Map.of(),
            Map.of());

    /** The kind of crate of that name; every name inside a checked catalogue is known. */
    public CrateType crate(String name) {
        return crates.stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No crate " + name));
    }

    /** What a bag or a crate of its own is called; one that nobody named goes by its code. */
    public String bagSays(String bag, Workshop workshop, String language) {
        return ownCrate(bag)
                .map(OwnCrate::says)
                .or(() -> Optional.ofNullable(workshop.bags().get(bag)))
                .map(says -> says.in(language))
                .orElse(bag);
    }

    public Optional<OwnCrate> ownCrate(String bag) {
        return ownCrates.stream().filter(own -> own.bag().equals(bag)).findFirst();
    }
}
