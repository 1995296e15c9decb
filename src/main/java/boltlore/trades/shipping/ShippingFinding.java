package boltlore.trades.shipping;

import static boltlore.findings.Severity.CHECK;
import static boltlore.findings.Severity.NOTE;
import static boltlore.findings.Severity.STOP;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** What crates and their papers may show. */
public enum ShippingFinding implements Kind {
    NO_CRATES(STOP),
    GOES_INTO_NO_CRATE(STOP),
    NO_CRATE_OF_THAT_KIND(STOP),
    MORE_THAN_CAN_BE_PACKED(STOP),
    BRACKETS_NOT_DECIDED(STOP),
    GOODS_NOT_SAID(STOP),
    BATTERY_WITHOUT_UN_NUMBER(STOP),
    LITHIUM_UNDER_ANOTHER_NUMBER(STOP),
    UN_NUMBER_NOT_LISTED(STOP),
    UN_NUMBER_OF_VEHICLES(STOP),
    BATTERY_ALONE_AS_WITH_EQUIPMENT(STOP),
    BATTERY_ENERGY_NOT_KNOWN(STOP),
    CLASS_AGAINST_UN_NUMBER(STOP),
    NO_UN_MARK(STOP),
    NO_UN_MARK_BY_AIR(STOP),
    TEST_SUMMARY_NOT_KEPT(STOP),
    SMALL_RUN_BY_AIR(STOP),
    PACKAGE_TOO_HEAVY_BY_AIR(STOP),
    CHARGE_NOT_KNOWN_BY_AIR(STOP),
    CHARGE_TOO_HIGH_BY_AIR(STOP),
    WOOD_WITHOUT_MARK(STOP),
    CRATE_MASS_NOT_KNOWN(CHECK),
    ONE_PIECE_HEAVIEST(CHECK),
    SIZES_BY_MASS(CHECK),
    GOODS_SAID_HARMLESS(CHECK),
    SMALL_RUN_UNTESTED(CHECK),
    CUSTOMS_CODE_OF_BATTERY(CHECK),
    CUSTOMS_CODE_OF_MOTOR(CHECK),
    CUSTOMS_CODE_NOT_KNOWN(CHECK),
    CUSTOMS_VALUES_NOT_KNOWN(CHECK),
    ADVISER_NOT_NAMED(CHECK),
    BATTERY_PASSPORT(CHECK),
    ADR_POINTS_ABOVE_EXEMPTION(CHECK),
    WOOD_MARK_TO_LOOK_FOR(CHECK),
    DESTINATION_NOT_GIVEN(CHECK),
    NOT_REACHED_BY_ROAD(CHECK),
    CONSIGNEE_NOT_KNOWN(CHECK),
    CONSIGNEE_ELSEWHERE(CHECK),
    DELIVERY_TERM_OF_THE_SEA(CHECK),
    DELIVERY_NOT_SAID(CHECK),
    SENDER_WITHOUT_EORI(CHECK),
    CUSTOMS_VALUE_OF_CLASS_NOT_KNOWN(CHECK),
    DESTINATION_NOT_GIVEN_YET(NOTE),
    ADR_POINTS_WITHIN_EXEMPTION(NOTE),
    CRATES_NOT_AS_PRICED(NOTE),
    SUPPLIED_BY_CUSTOMER(NOTE);

    private final Severity severity;

    ShippingFinding(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String room() {
        return ShippingTrade.NAME;
    }
}
