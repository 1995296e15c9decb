package boltlore.trades.shipping;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;

/**
 * Entries of the dangerous-goods list that batteries of a kit may come under. UN numbers: packing instruction P903 of the
 * road rules (ADR) and the note of a safety-adviser association on vehicle entries; transport category 2 of the lithium
 * entries and its factor 3: road table 1.1.3.6; class, label, tunnel code and the lead-acid entries: from memory. UN 3556 is in the list
 * since ADR 2025 (UN Model Regulations, 23rd revision); before it such vehicles went as UN 3171.
 */
public enum UnNumber {
    LITHIUM_ION("UN 3480", "LITHIUM ION BATTERIES", "9", "9A", 2, 3),
    LITHIUM_ION_WITH_EQUIPMENT("UN 3481", "LITHIUM ION BATTERIES PACKED WITH EQUIPMENT", "9", "9A", 2, 3),
    LITHIUM_VEHICLE("UN 3556", "VEHICLE, LITHIUM ION BATTERY POWERED", "9", "9A", 2, 3),
    LEAD_ACID_SEALED("UN 2800", "BATTERIES, WET, NON-SPILLABLE", "8", "8", 3, 1),
    LEAD_ACID_FILLED("UN 2794", "BATTERIES, WET, FILLED WITH ACID", "8", "8", 3, 1);

    private final String un;
    private final String properName;
    private final String hazardClass;
    private final String label;
    private final int category;
    private final int pointsPerKg;

    UnNumber(String un, String properName, String hazardClass, String label, int category, int pointsPerKg) {
        this.un = un;
        this.properName = properName;
        this.hazardClass = hazardClass;
        this.label = label;
        this.category = category;
        this.pointsPerKg = pointsPerKg;
    }

    /** Empty for a number that is not listed here. */
    public static Optional<UnNumber> of(String un) {
        return Arrays.stream(values()).filter(each -> each.un.equals(un)).findFirst();
    }

    /**
     * What a lithium-ion battery travels as. In a kit it lies in its own crate: never as a vehicle, and with its drive unit
     * in one package only where a dangerous-goods safety adviser says so.
     */
    public static UnNumber ofLithiumIon(Travels how) {
        return switch (how) {
            case ALONE -> LITHIUM_ION;
            case WITH_EQUIPMENT -> LITHIUM_ION_WITH_EQUIPMENT;
            case IN_VEHICLE -> LITHIUM_VEHICLE;
        };
    }

    /** How a battery is sent. */
    public enum Travels {
        ALONE,
        WITH_EQUIPMENT,
        IN_VEHICLE
    }

    public String un() {
        return un;
    }

    public String properName() {
        return properName;
    }

    public String hazardClass() {
        return hazardClass;
    }

    public String label() {
        return label;
    }

    /** Transport category of the road table for small loads. */
    public int category() {
        return category;
    }

    /** For each kilogram of the articles themselves, without packaging. */
    public BigDecimal pointsPerKg() {
        return BigDecimal.valueOf(pointsPerKg);
    }

    public boolean lithium() {
        return hazardClass.equals("9");
    }

    /** Whether acid is in it. */
    public boolean leadAcid() {
        return this == LEAD_ACID_SEALED || this == LEAD_ACID_FILLED;
    }

    /** Road tunnel code. */
    public String tunnel() {
        return "(E)";
    }
}
