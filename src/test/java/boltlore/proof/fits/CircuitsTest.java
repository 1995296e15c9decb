package boltlore.proof.fits;

import static boltlore.proof.fits.Planted.PICKUP;
import static boltlore.proof.fits.Planted.VAN;
import static boltlore.proof.fits.Planted.demo;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Coolant goes round, is filled in at one point and lets its air out, in every valid order. */
class CircuitsTest {

    @Test
    void a_hose_of_another_bore_does_not_go_on() {
        assertThat(demo().inPart(
                                "stook-cooling",
                                hose("a", 25) + ", " + hose("b", 19) + "]},\n  {\"part\": \"ST-HO-MFBR\"",
                                hose("a", 25) + ", " + hose("b", 25) + "]},\n  {\"part\": \"ST-HO-MFBR\"")
                        .found(PICKUP))
                .containsExactly(
                        "path or circuit broken: motor-coolant (motor-hose-feed to drive-unit)",
                        "quantity does not follow: hose-clips-19");
    }

    @Test
    void a_hose_that_is_wider_at_one_end_fits_a_radiator_that_is_so_too() {
        assertThat(demo().inPart("common-cooling", radiator(25), radiator(19))
                        .inPart(
                                "stook-cooling",
                                hose("a", 19) + ", " + hose("b", 25),
                                hose("a", 19) + ", " + hose("b", 19))
                        .found(PICKUP))
                .containsExactly("quantity does not follow: hose-clips-19", "quantity does not follow: hose-clips-25");
    }

    @Test
    void a_circuit_lacks_the_hose_of_one_body() {
        assertThat(demo().inKit(
                                VAN,
                                "cooling",
                                "\"part\": \"PV-HO-BRM\", \"quantity\": \"1\", \"when\": {\"body-era\": \"middle\"}",
                                "\"part\": \"PV-HO-BRM\", \"quantity\": \"1\", \"when\": {\"body-era\": \"middle\", \"drive-side\": \"left\"}")
                        .found(VAN))
                .containsExactly(
                        "path or circuit broken: battery-coolant (battery-hose-return)",
                        "quantity does not follow: hose-clips-19");
    }

    @Test
    void a_circuit_without_its_tank_cannot_be_filled() {
        assertThat(demo().inFits(
                                PICKUP,
                                "{\"path\": \"heater-tank\", \"flow\": \"coolant\", \"required\": {\"heater\": \"water\"}",
                                "{\"path\": \"heater-tank\", \"flow\": \"coolant\", \"required\": {\"heater\": \"water\", \"drive-side\": \"left\"}")
                        .found(PICKUP))
                .contains("circuit cannot be filled: heater-coolant (heater-tank)")
                .doesNotContain("circuit cannot be filled: motor-coolant (motor-tank)");
    }

    @Test
    void a_bleed_screw_of_another_circuit_bleeds_only_that() {
        assertThat(demo().inKit(VAN, "climate", "\"under\": \"heater-matrix\"", "\"under\": \"motor-radiator\"")
                        .found(VAN))
                .containsExactly("circuit cannot be bled: heater-coolant (heater-bleed)");
    }

    @Test
    void a_bleed_screw_may_sit_anywhere_on_its_circuit() {
        assertThat(demo().inKit(VAN, "climate", "\"under\": \"heater-matrix\"", "\"under\": \"heater-unit\"")
                        .found(VAN))
                .isEmpty();
    }

    @Test
    void a_bleed_screw_that_some_orders_lack_is_told() {
        assertThat(demo().inKit(
                                PICKUP,
                                "climate",
                                "\"part\": \"CO-BLD\", \"quantity\": \"1\", \"when\": {\"heater\": \"water\"}",
                                "\"part\": \"CO-BLD\", \"quantity\": \"1\", \"when\": {\"heater\": \"water\", \"load-bed\": \"fixed\"}")
                        .found(PICKUP))
                .containsExactly("circuit cannot be bled: heater-coolant (heater-bleed)");
    }

    @Test
    void a_t_piece_too_few_leaves_two_hoses_on_one_spigot() {
        assertThat(demo().inKit(
                                VAN,
                                "cooling",
                                "\"part\": \"CO-TE19\", \"quantity\": \"2\"",
                                "\"part\": \"CO-TE19\", \"quantity\": \"1\"")
                        .found(VAN))
                .containsExactly(
                        "port taken twice: rear-tees (in)",
                        "port taken twice: rear-tees (out)",
                        "port taken twice: rear-tees (branch)");
    }

    @Test
    void a_t_piece_too_many_leaves_its_spigots_open() {
        assertThat(demo().inKit(
                                VAN,
                                "cooling",
                                "\"part\": \"CO-TE19\", \"quantity\": \"2\"",
                                "\"part\": \"CO-TE19\", \"quantity\": \"3\"")
                        .found(VAN))
                .containsExactly(
                        "port leads nowhere: rear-tees (in)",
                        "port leads nowhere: rear-tees (out)",
                        "port leads nowhere: rear-tees (branch)");
    }

    @Test
    void the_chiller_is_fed_with_refrigerant_wherever_it_is_fitted() {
        assertThat(demo().inKit(
                                VAN,
                                "climate",
                                "\"part\": \"PV-RH-CLL\", \"quantity\": \"1\", \"when\": {\"filled\": \"chiller\", \"drive-side\": \"left\"}",
                                "\"part\": \"PV-RH-CLL\", \"quantity\": \"1\", \"when\": {\"filled\": \"chiller\", \"drive-side\": \"left\", \"battery\": \"two-strings\"}")
                        .found(VAN))
                .containsExactly("path or circuit broken: chiller-refrigerant (chiller-liquid-hose)");
    }

    @Test
    void a_clip_too_few_is_told_in_whichever_order_lacks_it() {
        assertThat(demo().inKit(
                                VAN,
                                "cooling",
                                "\"part\": \"FX-HC27\", \"quantity\": \"28\"",
                                "\"part\": \"FX-HC27\", \"quantity\": \"27\"")
                        .found(VAN))
                .containsExactly("quantity does not follow: hose-clips-19");
    }

    private static String radiator(int boreMm) {
        return "\"hs\": \"8708.91\", \"origin\": \"PL\"}, \"ports\": ["
                + hose("in", boreMm).replace("female", "male");
    }

    private static String hose(String end, int boreMm) {
        return "{\"port\": \"" + end
                + "\", \"kind\": \"hose\", \"flow\": \"coolant\", \"half\": \"female\", \"boreMm\": " + boreMm + "}";
    }
}
