package boltlore.catalogue.json;

import boltlore.json.TextShape;

/** What a name in a catalogue can be the name of. */
enum Kind {
    LANGUAGE("a language of the workshop", TextShape.LANGUAGE),
    STAGE("a fit stage of the workshop", TextShape.NAME),
    WORKED_STAGE("a fit stage with minutes", TextShape.NAME),
    BAG("a bag with words", TextShape.LINE),
    SUB_SYSTEM("a sub-system of the workshop", TextShape.WORDS),
    AISLE("an aisle of the workshop", Shapes.AISLE),
    LAID_OUT_AISLE("an aisle with its place", Shapes.AISLE),
    PARTNER("a partner of the workshop", TextShape.LINE),
    SUPPLIER("a supplier of the workshop", TextShape.LINE),
    LEAST_ORDER("a supplier with a least order", TextShape.LINE),
    MARKET("a market of the workshop", TextShape.NAME),
    SUPPLY("a supply of the workshop", TextShape.NAME),
    CAUTION("a caution of the workshop", TextShape.NAME),
    PART_KIND("a kind of parts", TextShape.NAME),
    BOUND("a bound of tests", TextShape.NAME),
    OVEN("an oven of the coating shop", TextShape.NAME),
    BOOTH("a booth of the coating shop", TextShape.NAME),
    COATER("a coater of the coating shop", TextShape.LINE),
    MASK("a mask of the coating shop", TextShape.NAME),
    CRATE("a crate of the workshop", TextShape.NAME),
    OWN_CRATE("a bag that is a crate of its own", TextShape.LINE),
    SIZED_PART("a part with its size", TextShape.PART_NUMBER),
    RATED_MOTOR("a motor with its power", TextShape.PART_NUMBER),
    CONCENTRATE("a liquid that is mixed", TextShape.PART_NUMBER, true),
    SHIPPED_BATTERY("a battery that is shipped", TextShape.PART_NUMBER),
    KEPT_PART("a part that is kept", TextShape.PART_NUMBER),
    POWDER("a powder of the coating shop", TextShape.PART_NUMBER),
    FINISH("a finish", TextShape.NAME),
    SAW("a saw of the workshop", TextShape.NAME),
    MATERIAL("a material", TextShape.NAME),
    PART("a part", TextShape.PART_NUMBER),
    PRICED_OPERATION("an operation with its own rate", TextShape.LINE),
    WORK_CENTRE("a work centre of the workshop", TextShape.NAME),
    WORKED_OPERATION("an operation at a work centre", TextShape.LINE),
    KIT_WORK("work on whole kits at a work centre", TextShape.NAME),
    PART_WITH_LOT("a part with its own lot", TextShape.PART_NUMBER),
    DELIVERY("a supplier with delivery costs", TextShape.LINE),
    PARTNER_WITH_TERMS("a partner with terms", TextShape.LINE),
    TAXED_MARKET("a market with a tax", TextShape.NAME),
    SUB_SYSTEM_CALLED("a sub-system with words", TextShape.WORDS),
    OPTION("an option", TextShape.NAME, true),
    VALUE("a value of that option", TextShape.NAME, true),
    MEASURE("a dimension that is measured", TextShape.NAME, true),
    LIMIT("a limit", TextShape.NAME, true),
    FINISH_ROLE("a finish role", TextShape.NAME, true),
    REMOVED("a thing that comes off", TextShape.NAME, true),
    ABOARD("a thing aboard", TextShape.NAME, true),
    STATION("a position with a station", TextShape.NAME, true),
    SUB_SYSTEM_STATION("a sub-system with a station", TextShape.WORDS, true),
    JOINT_POSITION("a position with a joint", TextShape.NAME, true),
    PACK("a pack", TextShape.NAME, true),
    CAPACITOR("a capacitor", TextShape.NAME, true),
    FUSE("a fuse", TextShape.NAME, true),
    CABLE("a cable under 'cables' of electrics.json", TextShape.PART_NUMBER, true),
    FUSED_CIRCUIT("a circuit with a blade fuse", TextShape.NAME, true),
    BRANCH("a branch", TextShape.NAME, true),
    LEAD("a public lead", TextShape.PART_NUMBER, true),
    RUN("a path or circuit", TextShape.NAME, true),
    FOLLOWS("a quantity that follows", TextShape.NAME, true),
    COOLANT("a coolant", TextShape.NAME, true),
    CIRCUIT("a circuit", TextShape.NAME, true),
    MOUNT("a mount", TextShape.NAME, true),
    SHOCK("a shock", TextShape.NAME, true),
    DRIVE_UNIT("a drive unit with its figures", TextShape.PART_NUMBER, true),
    INSTRUMENT("an instrument", TextShape.NAME, true),
    TEST_GROUP("a group of tests", TextShape.NAME, true),
    TEST("a test", TextShape.NAME, true),
    LABEL("a label", TextShape.NAME, true),
    PAIR("a pair", TextShape.NAME, true),
    POSITION("a position", TextShape.NAME, true),
    LINE("a line", TextShape.NAME, true),
    COMPANION("a part with companions", TextShape.PART_NUMBER, true);

    private final String says;

    @SuppressWarnings("ImmutableEnumChecker") // a shape holds a function, but none that changes
    private final TextShape shape;

    private final boolean inFamily;

    Kind(String says, TextShape shape) {
        this(says, shape, false);
    }

    Kind(String says, TextShape shape, boolean inFamily) {
        this.says = says;
        this.shape = shape;
        this.inFamily = inFamily;
    }

    /** What it is, with its article. */
    String says() {
        return says;
    }

    TextShape shape() {
        return shape;
    }

    /** Whether each family has its own names of this kind. */
    boolean inFamily() {
        return inFamily;
    }
}
