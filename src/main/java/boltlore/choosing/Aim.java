package boltlore.choosing;

/** What makes one complete kit better than another. */
public enum Aim {
    /** Least cost of the kit with scrap and coating. */
    CHEAPEST("cheapest"),
    /** Most cost: the upper end of what choices may come to. */
    DEAREST("dearest"),
    /** Least mass, without the film of powder. */
    LIGHTEST("lightest"),
    /** Shortest chain of lead times, and of those kits the cheapest. */
    SOONEST("soonest");

    private final String written;

    Aim(String written) {
        this.written = written;
    }

    public String written() {
        return written;
    }
}
