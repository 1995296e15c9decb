package boltlore.trades;

import boltlore.catalogue.Catalogue;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.findings.Kind;
import boltlore.trades.TradeOption.Given;
import java.util.List;

/**
 * One trade of the workshop. Its command, its place in the help, its part of {@code kit --all} and its JSON come from
 * here; a trade that is in the list of trades needs nothing else.
 */
public interface Trade {

    /** The command, and the folder below 'exports' that it writes into: 'charging'. */
    String name();

    Room room();

    /** One sentence for the help: what one gets. */
    String does();

    /** All kinds of findings that it may have, which orders may waive. */
    List<? extends Kind> kinds();

    /** Options beside those that every trade has. */
    default List<TradeOption<?>> options() {
        return List.of();
    }

    /** All that is wrong with files that its options name, so that it is told together with what is wrong with orders. */
    default List<Fault> faults(Given options, Catalogue catalogue) {
        return List.of();
    }

    /**
     * What it makes of these kits: a result for each order, or one for all of them together. Orders of which it can make
     * nothing are left out.
     *
     * @param kits orders that nothing stops, at least one
     * @return faulty where what it needs is missing or an option does not fit
     */
    Outcome<List<TradeResult>> work(List<KitInWork> kits, Given options);

    /**
     * The same where something stops other orders of the run; a trade that works on all of them together says so on its
     * sheets.
     */
    default Outcome<List<TradeResult>> work(List<KitInWork> kits, List<StoppedOrder> stopped, Given options) {
        return work(kits, options);
    }

    /** Said where it can make nothing of any order. */
    String nothing();

    /** Whether {@code kit --all} writes its sheets; its findings are told with every kit. */
    default boolean inKit() {
        return true;
    }

    /** The options with which it works on the kit of a single order. */
    default Given forKit() {
        return Given.NONE;
    }
}
