package boltlore.catalogue;

import java.math.BigDecimal;

/** Somebody or something that the vehicle carries: never part of the vehicle's own mass. */
public record Aboard(String name, String says, Who who, BigDecimal massKg, Station at) {

    /** In the order in which they are loaded. */
    public enum Who {
        DRIVER,
        PASSENGER,
        LUGGAGE
    }
}
