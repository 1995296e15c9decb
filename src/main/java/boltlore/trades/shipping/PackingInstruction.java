package boltlore.trades.shipping;

import boltlore.catalogue.ShippedBattery;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Packing instructions for lithium-ion batteries that a trained person chooses from, in the road rules (ADR 4.1.4) and
 * under the same numbers in the sea rules (IMDG Code 4.1.4), then in the air rules. P903, LP903, P910 and special provision
 * 310: text of the road rules; P908, P911, that damaged ones never fly, and the air rules' 965, 966, 910 and special
 * provision A88: from memory (that A88 asks for the approval of the State of origin: lithiumca.batteriestransport.org, page
 * 18).
 */
public enum PackingInstruction {
    STRONG_CASE(
            "P903(2)",
            "12 kg or more each in a strong, impact-resistant case: strong outer packaging, protective enclosure or pallet,"
                    + " not necessarily UN-approved; secured, and nothing rests on the terminals"),
    APPROVED(
            "P903(1)", "UN-approved packaging at packing group II level, each kept from moving and from short circuit"),
    SINGLE_LARGE("LP903", "one single battery in large packaging at packing group II level"),
    SMALL_RUN("P910; special provision 310", "prototype, or of a run of at most 100"),
    DAMAGED("P908 or P911", "damaged or defective: not as packed here, and never by air"),
    ALONE_BY_AIR(
            "965, section IA",
            "batteries alone, cargo aircraft only: UN-approved packaging at packing group II level, 35 kg of batteries at"
                    + " most; unapproved outer packaging of heavy ones in a strong case only where the State of origin approves"),
    WITH_EQUIPMENT_BY_AIR(
            "966, section I", "batteries packed with equipment: UN-approved packaging at packing group II level"),
    SMALL_RUN_BY_AIR(
            "910; special provision A88",
            "prototype, or of a run of at most 100 a year: only with the approval of the authority of the State of origin"),
    DAMAGED_BY_AIR("forbidden", "damaged or defective: never by air");

    /** From this mass on a battery in a strong case need not lie in approved packaging. */
    static final BigDecimal HEAVY_KG = BigDecimal.valueOf(12);

    private final String code;
    private final String says;

    PackingInstruction(String code, String says) {
        this.code = code;
        this.says = says;
    }

    public String code() {
        return code;
    }

    public String says() {
        return says;
    }

    /** Those to consider for sound batteries of that mass each, so many in a package. */
    public static List<PackingInstruction> toConsider(BigDecimal eachKg, BigDecimal inPackage, ShippedBattery battery) {
        List<PackingInstruction> all = new ArrayList<>();
        if (battery.smallRun()) {
            all.add(SMALL_RUN);
        }
        if (strong(eachKg, battery)) {
            all.add(STRONG_CASE);
        }
        all.add(APPROVED);
        if (inPackage.compareTo(BigDecimal.ONE) == 0) {
            all.add(SINGLE_LARGE);
        }
        return List.copyOf(all);
    }

    /** Those of the air rules to consider for sound batteries that travel under that number. */
    static List<PackingInstruction> byAir(String un, ShippedBattery battery) {
        PackingInstruction usual =
                un.equals(UnNumber.LITHIUM_ION_WITH_EQUIPMENT.un()) ? WITH_EQUIPMENT_BY_AIR : ALONE_BY_AIR;
        return battery.smallRun() ? List.of(usual, SMALL_RUN_BY_AIR) : List.of(usual);
    }

    /** What holds for a damaged one. */
    static PackingInstruction ofDamaged(By by) {
        return by == By.AIR ? DAMAGED_BY_AIR : DAMAGED;
    }

    /** Whether packaging without approval may do. */
    static boolean strong(BigDecimal eachKg, ShippedBattery battery) {
        return battery.strongCase() && eachKg.compareTo(HEAVY_KG) >= 0;
    }
}
