package boltlore.catalogue.json;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Line;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("What is left out")
class DefaultsTest {

    private static final String DEFAULTS = """
            {"parts": {"revision": "C", "unit": "each", "source": "buy", "supplier": "Bolt Bros", "leadDays": 9},
             "positions": {"fill": "one", "stage": "rear", "subSystem": "drive"},
             "lines": {"quantity": "2"}}
            """;

    private static final String PARTS = """
            {"parts": [
              {"part": "Z-1", "name": {"en": "Lamp", "de": "Leuchte"}, "cost": "3", "massKg": "0.2"},
              {"part": "Z-2", "revision": "B", "name": "Holder", "source": "make", "cost": "5", "massKg": "0.4"},
              {"part": "Z-3", "name": "Cover", "cost": "5", "massKg": "0.4", "leadDays": 1}
            ]}
            """;

    private static final String KIT = """
            {"positions": [
              {"part": "Z-1"},
              {"part": "Z-2", "quantity": "1", "position": "lamp-holder", "stage": "front"},
              {"position": "covers", "fill": "some", "lines": [{"part": "Z-3"}, {"part": "Z-1", "quantity": "4"}]}
            ]}
            """;

    @TempDir
    private Path folder;

    private SmallCatalogue small;

    @BeforeEach
    void begin() {
        small = SmallCatalogue.in(folder)
                .write("workshop/defaults.json", DEFAULTS)
                .write("parts/lamps.json", PARTS)
                .write("families/cart/kit/lamps.json", KIT);
    }

    private Part part(String number) {
        return Objects.requireNonNull(small.catalogue().parts().get(new PartNumber(number)));
    }

    private Position position(String name) {
        return small.catalogue().family("cart").positions().stream()
                .filter(position -> position.name().text().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Nested
    @DisplayName("of a part")
    class OfParts {

        @Test
        void is_what_the_workshop_says_it_is() {
            assertThat(part("Z-1").revision()).isEqualTo("C");
            assertThat(part("Z-1").leadDays()).isEqualTo(9);
            assertThat(Objects.requireNonNull(part("Z-1").buying()).supplier()).isEqualTo("Bolt Bros");
        }

        @Test
        void yields_to_what_is_written() {
            assertThat(part("Z-2").revision()).isEqualTo("B");
            assertThat(part("Z-3").leadDays()).isEqualTo(1);
        }

        @Test
        void has_no_supplier_where_the_part_is_made() {
            assertThat(part("Z-2").buying()).isNull();
            assertThat(part("Z-2").leadDays()).isZero();
        }

        @Test
        void is_a_fault_where_the_workshop_says_nothing_of_it_either() {
            small.write("workshop/defaults.json", DEFAULTS.replace("\"unit\": \"each\", ", ""));

            assertThat(small.faults()).extracting(fault -> fault.found()).containsOnly("no 'unit'");
        }
    }

    @Nested
    @DisplayName("of a position")
    class OfPositions {

        @Test
        void follows_from_its_only_part() {
            Position lamp = position("z-1");

            assertThat(lamp.says().in("de")).isEqualTo("Leuchte");
            assertThat(lamp.stage()).isEqualTo("rear");
            assertThat(lamp.lines()).hasSize(1);
            assertThat(lamp.lines().get(0).quantity()).isEqualByComparingTo(new BigDecimal("2"));
        }

        @Test
        void yields_to_what_is_written() {
            assertThat(position("lamp-holder").stage()).isEqualTo("front");
            assertThat(position("lamp-holder").lines().get(0).quantity()).isEqualByComparingTo(BigDecimal.ONE);
        }

        @Test
        void is_its_name_in_words_where_it_has_several_parts() {
            assertThat(position("covers").says().english()).isEqualTo("Covers");
            assertThat(position("covers").lines())
                    .extracting(Line::name)
                    .extracting(Object::toString)
                    .containsExactly("covers-z-3", "covers-z-1");
        }
    }

    @Test
    void of_an_option_is_its_name_in_words() {
        small.write(
                "families/tub/family.json",
                "{\"family\": \"tub\", \"says\": \"Tub\", \"options\": [{\"option\": \"side-door\", \"values\": [{\"value\": \"sliding-door\"}]}]}");
        Catalogue catalogue = small.catalogue();

        assertThat(catalogue.family("tub").options().get(0).asks()).isEqualTo("Which side door?");
        assertThat(catalogue
                        .family("tub")
                        .options()
                        .get(0)
                        .values()
                        .get(0)
                        .says()
                        .english())
                .isEqualTo("Sliding door");
    }

    @Test
    void is_never_a_key_that_defaults_do_not_know() {
        small.write("workshop/defaults.json", "{\"parts\": {\"cost\": \"1\"}}");

        assertThat(small.faults()).extracting(fault -> fault.found()).contains("the unknown key 'cost'");
    }
}
