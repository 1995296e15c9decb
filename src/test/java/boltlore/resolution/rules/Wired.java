package boltlore.resolution.rules;

import boltlore.catalogue.Role;
import boltlore.resolution.rules.Facts.Electric;
import java.math.BigDecimal;

/** Values in electrical roles; what is not said is not known. */
final class Wired {

    private Wired() {}

    static Electric plain(Role role, String value) {
        return new Electric(role, value, 0, null, null, null, null, null);
    }

    static Electric phases(Role role, String value, int phases) {
        return new Electric(role, value, phases, null, null, null, null, null);
    }

    static Electric amps(Role role, String value, String amps) {
        return new Electric(role, value, 0, new BigDecimal(amps), null, null, null, null);
    }

    static Electric outlet(String value, String socket, String volts, String amps) {
        return new Electric(Role.EXPORT, value, 0, new BigDecimal(amps), new BigDecimal(volts), socket, null, null);
    }

    static Electric charger(String value, boolean twoWay, String exportKw) {
        return new Electric(Role.CHARGER, value, 0, null, null, null, twoWay, new BigDecimal(exportKw));
    }
}
