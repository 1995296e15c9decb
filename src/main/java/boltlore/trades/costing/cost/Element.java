package boltlore.trades.costing.cost;

/** What a full cost is made of, in the order in which it is told. */
public enum Element {
    MATERIAL("Material and bought parts"),
    SCRAP("Scrap allowance"),
    LABOUR("Labour"),
    SET_UP("Set-up per lot"),
    OWN_COATING("Coating, own oven"),
    OUTSIDE_WORK("Subcontract"),
    KIT_ASSEMBLY("Assembly of the kit"),
    KIT_TEST("Test on the bench"),
    KIT_PACKING("Packing"),
    CRATES("Crates"),
    FREIGHT("Freight"),
    DUTY("Duty"),
    CLEARANCE("Clearance"),
    OVERHEAD("Overhead");

    private final String says;

    Element(String says) {
        this.says = says;
    }

    public String says() {
        return says;
    }
}
