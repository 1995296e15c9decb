package boltlore.trades.costing;

import static boltlore.trades.costing.SketchedPart.bought;
import static boltlore.trades.costing.SketchedPart.made;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What is to make")
class JobTest {

    @Test
    @DisplayName("takes the set-up once and the run for each piece")
    void minutes() {
        CostedBill costed = new SmallKit()
                .know(made("BR-1").operation("saw", "10", "2.5").operation("weld", "5", "7"))
                .take("drive", "BR-1", "3")
                .take("battery", "BR-1", "1")
                .priced();

        assertThat(Job.of(costed)).extracting(Job::minutes).containsExactly(new BigDecimal("53.0"));
    }

    @Test
    @DisplayName("stands with the first to release on top")
    void order() {
        CostedBill costed = new SmallKit()
                .know(made("CR-1").days(5).contains("PL-1", "2"))
                .know(made("PL-1").days(2))
                .know(made("AA-1").days(1))
                .take("drive", "AA-1", "1")
                .take("drive", "CR-1", "1")
                .priced();

        assertThat(Job.of(costed))
                .extracting(job -> job.part().number().text())
                .containsExactly("PL-1", "CR-1", "AA-1");
    }

    @Test
    @DisplayName("holds nothing that is bought, nor what comes inside it")
    void bought_is_not_made() {
        CostedBill costed = new SmallKit()
                .know(bought("BX-1").contains("BR-1", "2"))
                .know(made("BR-1"))
                .take("drive", "BX-1", "1")
                .priced();

        assertThat(Job.of(costed)).isEmpty();
    }

    @Test
    @DisplayName("makes one more where scrap asks for a part of one")
    void scrap() {
        CostedBill costed = new SmallKit()
                .know(made("BR-1").scrap("10"))
                .take("drive", "BR-1", "9.5")
                .priced();

        assertThat(Job.of(costed)).extracting(Job::count).containsExactly(new BigDecimal("11"));
    }
}
