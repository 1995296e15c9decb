package boltlore.trades.weighing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a sub-system of the kit puts on the two axles; of the battery that is its split. */
public record SubSystemLoad(String subSystem, AxleLoads loads) {

    /** In the order of the bill. */
    public static List<SubSystemLoad> of(Weighing weighing, int wheelbaseMm) {
        Map<String, AxleLoads> loads = new LinkedHashMap<>();
        weighing.added().forEach(each -> loads.merge(each.subSystem(), each.on(wheelbaseMm), AxleLoads::plus));
        List<SubSystemLoad> all = new ArrayList<>();
        loads.forEach((subSystem, sum) -> all.add(new SubSystemLoad(subSystem, sum)));
        return all;
    }
}
