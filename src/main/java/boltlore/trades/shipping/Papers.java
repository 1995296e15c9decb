package boltlore.trades.shipping;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Documents that go with lithium batteries, and what must stand in them. */
public final class Papers {

    /**
     * What a test summary says (UN Manual of Tests and Criteria, 38.3.5; list of jjkellercompliancenetwork.com). It must be
     * available and need not travel with the goods.
     */
    public static final List<String> TEST_SUMMARY = List.of(
            "manufacturer",
            "contacts",
            "laboratory",
            "unique report number",
            "date",
            "description (kind, mass, Wh, physical form, model)",
            "tests with pass or fail",
            "reference for assembled battery",
            "manual revision",
            "signatory");

    /** From this day on a battery of an electric vehicle on the EU market has its passport: Regulation (EU) 2023/1542. */
    public static final LocalDate PASSPORT_FROM = LocalDate.of(2027, 2, 18);

    /** Up to these energies lithium-ion cells and batteries count as small (battery transport guide). */
    public static final int SMALL_CELL_WH = 20;

    public static final int SMALL_BATTERY_WH = 100;

    private Papers() {}

    /** Whether a battery that comes on the EU market on that day needs its passport. */
    public static boolean passportDue(LocalDate day) {
        return !day.isBefore(PASSPORT_FROM);
    }

    /** Documents required. */
    public static List<String> required(By by, boolean exempt, @Nullable String testSummary) {
        List<String> all = new ArrayList<>();
        all.add("Test summary of the battery (UN Manual of Tests and Criteria, 38.3.5)"
                + (testSummary == null ? "" : ": " + testSummary) + ". It says: " + String.join("; ", TEST_SUMMARY)
                + ".");
        switch (by) {
            case ROAD -> road(all, exempt);
            case SEA -> sea(all);
            case AIR ->
                all.add("Shipper's declaration for dangerous goods (" + By.AIR.rules()
                        + "), made out by a shipper trained for air");
        }
        return List.copyOf(all);
    }

    private static void road(List<String> all, boolean exempt) {
        all.add("Transport document as drafted in the folder 'customer'");
        if (!exempt) {
            all.add("Instructions in writing in the vehicle; the driver's training certificate for dangerous goods");
        }
    }

    private static void sea(List<String> all) {
        all.add("Dangerous-goods declaration for sea (" + By.SEA.rules()
                + "), and the container or vehicle packing certificate");
    }
}
