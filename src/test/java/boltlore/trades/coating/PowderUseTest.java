package boltlore.trades.coating;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Powder;
import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.trades.coating.PowderUse.Overspray;
import java.math.BigDecimal;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PowderUseTest {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    static Stream<CheckRow> reclaim() {
        return CheckTable.rows("cost-and-price.csv", "CO-05");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("reclaim")
    @DisplayName(
            "Worked example of a trade journal, all overspray being gathered: its value against the cost of the change")
    void published(CheckRow row) {
        BigDecimal sprayed = row.number("sprayed_lb");
        BigDecimal film =
                sprayed.multiply(row.number("transfer_efficiency_pct")).divide(HUNDRED);
        Powder powder = new Powder("P", "P", row.number("powder_price_per_lb"));
        PowderUse use = PowderUse.of(film, sprayed, powder, HUNDRED, row.number("colour_change_cost"));
        assertThat(use.wasteKg().subtract(use.gatheredKg())).isEqualByComparingTo(row.number("expected_overspray_lb"));
        assertThat(use.saved()).isEqualByComparingTo(row.number("expected_powder_value"));
        assertThat(use.gathered()).isEqualTo(row.text("expected_decision").equals("reclaim"));
    }

    private static PowderUse use(String cleaning, String reclaimPercent, String never) {
        Powder powder = new Powder("P", "P", new BigDecimal("10.00"), null, never);
        BigDecimal percent = reclaimPercent.isEmpty() ? null : new BigDecimal(reclaimPercent);
        return PowderUse.of(new BigDecimal("6"), new BigDecimal("10"), powder, percent, new BigDecimal(cleaning));
    }

    @Test
    @DisplayName("6 kg on the parts: 10 kg to waste or 8 kg gathered at 75 %; the 2 kg are worth 20")
    void gathered() {
        PowderUse use = use("19.99", "75", "");
        assertThat(use.overspray()).isEqualTo(Overspray.GATHERED);
        assertThat(use.issueKg()).isEqualByComparingTo("8");
    }

    @Test
    void the_cleaning_costs_as_much_as_the_powder_saved_so_it_goes_to_waste() {
        PowderUse use = use("20.00", "75", "");
        assertThat(use.overspray()).isEqualTo(Overspray.WASTE);
        assertThat(use.issueKg()).isEqualByComparingTo("10");
    }

    @Test
    void a_powder_that_may_not_be_sprayed_again_goes_to_waste_whatever_it_is_worth() {
        assertThat(use("0", "75", "flakes").overspray()).isEqualTo(Overspray.NEVER);
    }

    @Test
    void a_booth_that_gathers_none() {
        assertThat(use("0", "", "").overspray()).isEqualTo(Overspray.NO_GATHERING);
    }
}
