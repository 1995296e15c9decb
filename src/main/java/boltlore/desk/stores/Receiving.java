package boltlore.desk.stores;

import boltlore.desk.frame.Names;
import boltlore.desk.frame.Stretch;
import java.util.List;

/** Something that comes in. */
public record Receiving(
        List<String> told,
        String part,
        String name,
        String unit,
        Names names,
        String purchase,
        String bin,
        boolean byLot,
        boolean bySerial,
        List<Came> came,
        Stretch<DueIn> due) {

    /** Something that came in lately, and may have been written down wrongly. */
    public record Came(long entry, String says) {}
}
