package boltlore.desk.stores;

import boltlore.desk.frame.Stretch;
import java.util.List;

/** Something that comes in. */
public record Receiving(
        List<String> told,
        String part,
        String name,
        String unit,
        String purchase,
        String bin,
        boolean byLot,
        boolean bySerial,
        Stretch<DueIn> due) {}
