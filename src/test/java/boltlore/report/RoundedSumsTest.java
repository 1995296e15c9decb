package boltlore.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Sums of figures that are printed rounded")
class RoundedSumsTest {

    private static TableBuilder masses(String... kg) {
        TableSpec<String> spec = TableSpec.<String>named("masses-" + kg[0].replace(".", "-"))
                .text("part", "Part", mass -> mass)
                .decimal("mass", "Mass", "kg", 1, BigDecimal::new);
        TableBuilder table = spec.of(List.of(kg));
        table.total("all", "All")
                .sum("mass", List.of(kg).stream().map(BigDecimal::new).reduce(BigDecimal.ZERO, BigDecimal::add));
        return table;
    }

    private static List<String> notes(String language, TableBuilder... tables) {
        PageBuilder page = Page.named("Masses");
        for (TableBuilder table : tables) {
            page.add(table);
        }
        return Report.named("masses", "Masses").in(language).page(page).build().pages().stream()
                .flatMap(each -> each.blocks().stream())
                .filter(Note.class::isInstance)
                .map(note -> ((Note) note).words())
                .toList();
    }

    /** By hand: 0.24 and 0.24 are printed 0.2 and 0.2, and come to 0.48, printed 0.5. */
    @Test
    void are_told_where_the_printed_ones_add_up_to_another_digit() {
        assertThat(notes("en", masses("0.24", "0.24")))
                .containsExactly(
                        "Figures are printed rounded; sums are of the exact figures, so that the last digit may"
                                + " differ.");
        assertThat(notes("de", masses("0.24", "0.24")))
                .singleElement()
                .asString()
                .startsWith("Die Zahlen sind gerundet");
    }

    @Test
    void say_nothing_where_they_add_up() {
        assertThat(notes("en", masses("0.21", "0.22"))).isEmpty();
        assertThat(notes("en", masses("0.25", "0.24"))).isEmpty();
    }

    @Test
    void are_told_once_on_a_sheet() {
        assertThat(notes("en", masses("0.24", "0.24"), masses("0.14", "0.14"))).hasSize(1);
    }
}
