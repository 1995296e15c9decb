package boltlore.cli;

import boltlore.proof.StatementKind;
import boltlore.proof.kinds.Kinds;
import boltlore.trades.charging.ChargingKinds;
import boltlore.trades.mounting.MountKinds;
import java.util.List;
import java.util.stream.Stream;

/** Everything that is asked of every valid order of a family: what its kits show, and what trades find of them. */
final class ProvedKinds {

    private ProvedKinds() {}

    static List<StatementKind> all() {
        return Stream.of(Kinds.all(), ChargingKinds.all(), MountKinds.all())
                .flatMap(List::stream)
                .toList();
    }
}
