package boltlore.trades.coating.sheets;

import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Powder;
import boltlore.trades.coating.PowderRun;
import boltlore.trades.coating.PowderUse;

/** What becomes of the powder that misses the parts, and why. */
final class OversprayWords {

    private OversprayWords() {}

    static String rule(CoatJob job) {
        boolean gathers = job.shop().booths().stream().anyMatch(booth -> booth.reclaimPercent() != null);
        return gathers
                ? "Overspray is gathered and sprayed again where the powder saved is worth more than cleaning filters,"
                        + " cyclone and sieve after it; else it goes to waste. Sieve what is gathered, and mix it with fresh"
                        + " powder as its data sheet allows."
                : "No booth gathers overspray: all of it goes to waste.";
    }

    static String decision(PowderUse use, PowderRun run, CoatingShop shop) {
        return switch (use.overspray()) {
            case GATHERED -> "gather and spray again: it saves more than the cleaning costs";
            case WASTE -> "to waste: what it saves is not worth the cleaning";
            case NEVER -> "to waste: never gathered, " + never(run, shop);
            case NO_GATHERING -> "to waste: the booth gathers none";
        };
    }

    private static String never(PowderRun run, CoatingShop shop) {
        Powder powder = shop.powders().get(run.powder());
        return powder == null ? "" : powder.neverReclaimed();
    }
}
