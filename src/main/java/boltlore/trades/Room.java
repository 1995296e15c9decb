package boltlore.trades;

/** The rooms of the workshop, in the order in which an order passes them. */
public enum Room {
    SALES("Sales"),
    STORES("Stores"),
    FABRICATION("Fabrication"),
    BENCH("Bench and shipping"),
    ENGINEERING("Engineering"),
    OFFICE("Office");

    private final String says;

    Room(String says) {
        this.says = says;
    }

    public String says() {
        return says;
    }
}
