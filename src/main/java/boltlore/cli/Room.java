package boltlore.cli;

/** Where in the house a command is used, in the order that help lists them. */
enum Room {
    SALES("Sales"),
    STORES("Stores"),
    FABRICATION("Fabrication"),
    BENCH("Bench and shipping"),
    ENGINEERING("Engineering");

    private final String says;

    Room(String says) {
        this.says = says;
    }

    String says() {
        return says;
    }
}
