package boltlore.cli;

import boltlore.resolution.rules.RuleResolver;
import boltlore.trades.orders.SheetFormats;

/** What a command will need later, begun on another core while the first one reads the catalogue. */
final class HeadStart {

    private HeadStart() {}

    /**
     * Loads the rules, then what writes sheets. It changes no result: what is not done in time is done later, and what
     * fails here fails again where it is told.
     */
    static void forSheets() {
        begin(() -> {
            RuleResolver.makeReady();
            SheetFormats.makeReady();
        });
    }

    /** Loads the rules. */
    static void forKits() {
        begin(RuleResolver::makeReady);
    }

    private static void begin(Runnable work) {
        Thread ahead = new Thread(work, "head start");
        ahead.setDaemon(true);
        ahead.setUncaughtExceptionHandler((thread, failure) -> {});
        ahead.start();
    }
}
