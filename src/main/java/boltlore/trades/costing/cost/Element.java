package boltlore.trades.costing.cost;

/** What a full cost is made of, in the order in which it is told. */
public enum Element {
    MATERIAL("Material and bought parts"),
    SCRAP("Lost as scrap"),
    LABOUR("Labour"),
    SET_UP("Set-up, shared over lots"),
    OWN_COATING("Coating, own oven"),
    OUTSIDE_WORK("Outside work"),
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
