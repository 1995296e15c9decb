package boltlore.trades.weighing;

import boltlore.catalogue.Chassis;
import java.util.Arrays;
import java.util.stream.Stream;

/** What the axles carry in one load case. */
public record CaseLoads(LoadCase loadCase, AxleLoads loads) {

    /** Each axle and the whole vehicle beside its limit. */
    Stream<LimitCheck> checks(Chassis chassis) {
        return Arrays.stream(Limited.values())
                .map(limited -> new LimitCheck(loadCase, limited, loads.on(limited), limited.limitKg(chassis)));
    }
}
