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
public abstract class Trade {

    private final String name;
    private final Room room;
    private final String does;
    private final String nothing;
    private final List<? extends Kind> kinds;
    private final List<TradeOption<?>> options;

    /**
     * A trade.
     *
     * @param name the command, and the folder below 'exports' that it writes into: 'charging'
     * @param does one sentence for the help: what one gets
     * @param nothing said where it can make nothing of any order
     * @param kinds all kinds of findings that it may have, which orders may waive
     * @param options beside those that every trade has
     */
    protected Trade(
            String name,
            Room room,
            String does,
            String nothing,
            List<? extends Kind> kinds,
            List<TradeOption<?>> options) {
        this.name = name;
        this.room = room;
        this.does = does;
        this.nothing = nothing;
        this.kinds = kinds;
        this.options = options;
    }

    protected Trade(String name, Room room, String does, String nothing, List<? extends Kind> kinds) {
        this(name, room, does, nothing, kinds, List.of());
    }

    public final String name() {
        return name;
    }

    public final Room room() {
        return room;
    }

    public final String does() {
        return does;
    }

    public final String nothing() {
        return nothing;
    }

    public final List<? extends Kind> kinds() {
        return kinds;
    }

    public final List<TradeOption<?>> options() {
        return options;
    }

    /** All that is wrong with files that its options name, so that it is told together with what is wrong with orders. */
    public List<Fault> faults(Given given, Catalogue catalogue) {
        return List.of();
    }

    /**
     * What it makes of these kits: a result for each order, or one for all of them together. Orders of which it can make
     * nothing are left out.
     *
     * @param kits orders that nothing stops, at least one
     * @return faulty where what it needs is missing or an option does not fit
     */
    public abstract Outcome<List<TradeResult>> work(List<KitInWork> kits, Given given);

    /**
     * The same where something stops other orders of the run; a trade that works on all of them together says so on its
     * sheets.
     */
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, List<StoppedOrder> stopped, Given given) {
        return work(kits, given);
    }

    /**
     * Folder below the one that it writes into, for what is made beside an earlier run's sheets and not in their place;
     * mostly empty.
     */
    public String beside(Given given) {
        return "";
    }

    /** The options with which it works on the kit of a single order. */
    public Given forKit() {
        return Given.NONE;
    }
}
