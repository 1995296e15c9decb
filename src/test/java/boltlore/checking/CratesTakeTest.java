package boltlore.checking;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.sketch.PartSketch;
import boltlore.trades.shipping.ShippedKit;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A part that can travel")
class CratesTakeTest {

    private static List<String> found(ShippedKit kit) {
        return CratesTake.remarks(kit.catalogue()).map(Remark::found).toList();
    }

    @Test
    void goes_into_some_crate() {
        assertThat(found(new ShippedKit().part("BLOCK", "178", 1))).isEmpty();
        assertThat(found(new ShippedKit().part("BLOCK", "178.5", 1))).containsExactly("178.5 kg that no crate takes");
    }

    @Test
    void is_not_too_long() {
        assertThat(found(new ShippedKit().part("RAIL", "2", 1).size("RAIL", 1001, 20, 20)))
                .containsExactly("2 kg that no crate takes");
    }

    @Test
    void has_its_un_number_where_it_is_a_battery() {
        PartSketch bare = PartSketch.bought("PACK").massKg("20").customs("8507.60", "HU");
        assertThat(found(new ShippedKit().part(bare, "", 1)))
                .containsExactly("the customs code of a battery and no UN number");
        assertThat(found(new ShippedKit().battery("PACK", "20", "3000"))).isEmpty();
    }
}
