package boltlore.cli;

import boltlore.proof.StatementKind;
import boltlore.proof.kinds.Kinds;
import boltlore.trades.charging.ChargingKinds;
import java.util.List;
import java.util.stream.Stream;

/** Everything that is asked of every valid order of a family: what its kits show, and what trades find of them. */
final class ProvedKinds {

    private ProvedKinds() {}

    static List<StatementKind> all() {
        return Stream.concat(Kinds.all().stream(), ChargingKinds.all().stream()).toList();
    }
}
