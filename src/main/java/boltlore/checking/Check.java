package boltlore.checking;

/** What is looked at; the written name stands before each remark. */
public enum Check {
    MASS_AGAINST_AREA("mass against coated area"),
    MASS_AGAINST_SCALE("rolled-up mass against the scale"),
    CHILD_HEAVIER("child heavier than its assembly"),
    MASS_PLAUSIBLE("mass that cannot be"),
    HOLE_SIZE("no hole for the fixing"),
    HOLE_COUNT("fewer holes than fixings"),
    HOLE_UNUSED("holes without a fixing"),
    THREAD("thread does not mate"),
    ENGAGEMENT("too little of the thread holds"),
    CABLE_LENGTH("cable outside its route"),
    METRES("metres against length"),
    MIRROR("mirror image that differs"),
    PORT("path through a port that is not there"),
    SIZE("size against size"),
    COSTS_NOTHING("costs nothing"),
    COST_TWICE("cost counted twice"),
    BUYING("bought, but not from whom or when"),
    PRICE_BREAKS("price that rises with the quantity"),
    PACKS("pack against minimum order"),
    MAKING("made, but not how"),
    HIGH_VOLTAGE("high voltage without its caution"),
    SHEET_CAUTION("sheet without its cautions"),
    BONDING("high voltage without a test of bonding"),
    WELDING("welded without its caution"),
    TEST_ORDER("test out of order"),
    TEST_CIRCUIT("tests that are neither dead nor live"),
    LITHIUM("lithium battery without its caution"),
    LIFTING("heavy without its caution"),
    HANG_POINTS("coated, but nowhere to hang it"),
    FILM("film out of order"),
    CURE("cure out of reach"),
    TORQUE_ALONE("torque without its table or friction"),
    TORQUE_HIGH("torque above its property class"),
    TORQUE_LOW("torque below its property class"),
    TORQUE_FAR_HIGH("torque far above its property class"),
    TORQUE_FAR_LOW("torque far below its property class"),
    BOLT_UNKNOWN("bolt of a thread or class that is not known"),
    SELF_LOCKING("self-locking nut without its prevailing torque"),
    ELECTRICS_MISSING("high-voltage data missing for some order"),
    ELECTRICS_TWICE("high-voltage data twice for some order"),
    MODULE_ENERGY("energy of a module against its volts and ampere-hours"),
    MODULES("modules of the pack against the kit"),
    BRANCH("limit of the power wiring exceeded"),
    SHARED_PINS("contacts shared without isolating contactors"),
    HAND("hand against the driver's side"),
    BIN_SHARED("two parts in one bin"),
    BIN_OFF_THE_WALK("bin in no aisle of the workshop"),
    BIN_OFF_THE_LAYOUT("bin beyond the measured aisles"),
    HOLE_UNKNOWN("holes that nobody counts"),
    COUNT_SAID("sentence against its quantity"),
    VALUE_UNUSED("value that changes nothing"),
    STATION("station that cannot be"),
    LIFTING_LIMIT("more than people lift"),
    CORE_CREDIT("core credit above the cost"),
    CUSTOMS_UNION("customs union that is none"),
    CRATE("goes into no crate"),
    UN_NUMBER("battery without its UN number"),
    NO_BRANCH("power cable that no branch judges"),
    ALTERNATE("alternate unlike its part"),
    NO_CENTRE("work without a work centre"),
    OVEN_DAY("oven's day in two lengths"),
    DRAWING_ISSUE("drawing in two issues"),
    TRANSLATION("not translated");

    private final String written;

    Check(String written) {
        this.written = written;
    }

    public String written() {
        return written;
    }
}
