package boltlore.trades.fixings;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.Item;
import boltlore.catalogue.Position;
import boltlore.demo.Demo;
import boltlore.measure.LineName;
import boltlore.trades.KitInWork;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The order of a fitter's card")
class FitOrderTest {

    private static List<Position> positions(KitInWork kit) {
        return kit.bill().items().stream().map(Item::position).distinct().toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-1011", "bl-2001"})
    void has_each_bracket_before_what_it_holds(String order) {
        KitInWork kit = Demo.kit(order);
        List<Position> backwards = new ArrayList<>(positions(kit));
        Collections.reverse(backwards);
        List<Position> sorted = FitOrder.of(backwards, kit.family());
        assertThat(sorted).containsExactlyInAnyOrderElementsOf(backwards);
        List<LineName> fitted = new ArrayList<>();
        for (Position position : sorted) {
            position.heldBy().stream()
                    .flatMap(List::stream)
                    .filter(line -> sorted.stream()
                            .anyMatch(other -> other.lines().stream()
                                    .anyMatch(one -> one.name().equals(line))))
                    .forEach(line -> assertThat(fitted)
                            .as(position.name() + " is held by " + line)
                            .contains(line));
            position.lines().forEach(line -> fitted.add(line.name()));
        }
    }

    @Test
    void leaves_the_rest_as_the_files_have_it() {
        KitInWork kit = Demo.kit("bl-1001");
        List<Position> free = positions(kit).stream()
                .filter(position -> position.heldBy().isEmpty() && position.under() == null)
                .toList();
        assertThat(FitOrder.of(free, kit.family())).containsExactlyElementsOf(free);
    }

    @ParameterizedTest
    @ValueSource(strings = {"FX-EYE10", "FX-LOCK", "FX-GREASE"})
    void what_is_needed_from_the_first_card_on_lies_in_its_bags(String part) {
        for (String order : List.of("bl-1001", "bl-2001")) {
            assertThat(Demo.kit(order).bill().items())
                    .filteredOn(item -> item.part().number().text().equals(part))
                    .isNotEmpty()
                    .allSatisfy(item -> assertThat(item.stage()).isEqualTo("rear"));
        }
    }
}
