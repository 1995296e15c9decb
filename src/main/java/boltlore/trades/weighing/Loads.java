package boltlore.trades.weighing;

import boltlore.catalogue.Aboard;
import boltlore.catalogue.Removed;
import boltlore.catalogue.Station;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.stream.Stream;

/** Balances of what stands at stations. */
final class Loads {

    private Loads() {}

    static Balance balance(BigDecimal massKg, Station at) {
        return Balance.of(massKg, BigDecimal.valueOf(at.behindFrontMm()));
    }

    static Balance removed(Collection<Removed> removed) {
        return sum(removed.stream().map(each -> balance(each.massKg(), each.at())));
    }

    static Balance added(Collection<Added> added) {
        return sum(added.stream().flatMap(each -> each.balance().stream()));
    }

    static Balance extras(Collection<ExtraLoad> extras) {
        return sum(extras.stream().map(each -> balance(each.massKg(), each.at())));
    }

    static Balance aboard(Stream<Aboard> aboard) {
        return sum(aboard.map(each -> balance(each.massKg(), each.at())));
    }

    private static Balance sum(Stream<Balance> balances) {
        return balances.reduce(Balance.NONE, Balance::plus);
    }
}
