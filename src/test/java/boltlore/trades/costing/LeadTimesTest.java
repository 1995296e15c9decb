package boltlore.trades.costing;

import static boltlore.trades.costing.SketchedPart.bought;
import static boltlore.trades.costing.SketchedPart.made;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.trades.costing.path.Timing;
import java.time.LocalDate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The lead time of a kit")
class LeadTimesTest {

    @Test
    @DisplayName("is the longest chain: part, assembly, outside coater, then the workshop's assembly days")
    void longest_chain() {
        CostedBill costed = kit(made("CR-1").days(5).coated("zinc"));

        assertThat(costed.leadDays()).isEqualTo(30 + 5 + 8 + 6);
    }

    @Test
    @DisplayName("takes no turn-round for what is coated in the own oven")
    void own_oven() {
        CostedBill costed = kit(made("CR-1").days(5).coated("black"));

        assertThat(costed.leadDays()).isEqualTo(30 + 5 + 6);
    }

    @Test
    @DisplayName("does not look inside what is bought")
    void bought_assembly() {
        CostedBill costed = kit(bought("CR-1").days(5));

        assertThat(costed.leadDays()).isEqualTo(5 + 6);
    }

    @Test
    @DisplayName("is another part's where that takes longer than the assembly")
    void other_chain() {
        CostedBill costed = new SmallKit()
                .know(made("CR-1").days(5).contains("TU-1", "1"))
                .know(bought("TU-1").days(10))
                .know(bought("DU-1").days(35))
                .take("drive", "CR-1", "1")
                .take("drive", "DU-1", "1")
                .priced();

        assertThat(costed.leadDays()).isEqualTo(35 + 6);
    }

    @Test
    @DisplayName("times a part that stands in two places by the earlier one")
    void earlier_place() {
        CostedBill costed = new SmallKit()
                .know(made("CR-1").days(5).contains("TU-1", "1"))
                .know(bought("TU-1").days(10))
                .take("drive", "TU-1", "1")
                .take("drive", "CR-1", "1")
                .priced();

        assertThat(Purchase.of(costed)).extracting(Purchase::timing).containsExactly(new Timing(11, 21));
    }

    @Test
    @DisplayName("counts calendar days back from the day the kit is due")
    void dates() {
        Timing timing = new Timing(6, 41);

        assertThat(timing.startBy(LocalDate.of(2026, 3, 31))).contains(LocalDate.of(2026, 2, 18));
        assertThat(timing.readyBy(LocalDate.of(2026, 3, 31))).contains(LocalDate.of(2026, 3, 25));
    }

    @Test
    @DisplayName("makes up no date where no day is due")
    void no_date() {
        assertThat(new Timing(6, 41).startBy(null)).isEmpty();
    }

    private static CostedBill kit(SketchedPart cradle) {
        return new SmallKit()
                .know(cradle.contains("TU-1", "2"))
                .know(bought("TU-1").days(30))
                .take("drive", "CR-1", "1")
                .priced();
    }
}
