package boltlore.checking;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Pack;
import boltlore.demo.Demo;
import boltlore.sketch.PartSketch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Energy is voltage times charge: 1 Wh = 1 V × 1 Ah (SI Brochure, 9th edition, tables 4 and 8). */
class ModuleEnergyTest {

    /** Of modules with 44 V and 80 Ah, that is 3520 Wh. */
    private static Pack pack() {
        return Demo.catalogue().families().values().stream()
                .flatMap(family -> family.electrics().packs().stream())
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"3520, false", "3555.2, false", "3484.8, false", "3555.3, true", "3484.7, true", "3463, true"})
    void the_energy_of_the_transport_papers_is_volts_times_ampere_hours_to_one_per_cent(
            String wattHours, boolean doubtful) {
        assertThat(ModuleEnergy.of(
                        pack(),
                        PartSketch.bought("BM-44")
                                .transport("UN 3480", wattHours)
                                .draw()))
                .hasSize(doubtful ? 1 : 0);
    }

    @Test
    void a_module_without_energy_is_the_business_of_shipping() {
        assertThat(ModuleEnergy.of(
                        pack(), PartSketch.bought("BM-44").transport("UN 3480").draw()))
                .isEmpty();
    }

    @Test
    void the_demo_tells_one_energy_everywhere() {
        assertThat(ModuleEnergy.remarks(Demo.catalogue())).isEmpty();
    }
}
