package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("orders")
class OrdersCommandTest {

    private static final Path TEXTBOOK = Path.of("src/test/resources/textbook");

    private static Ran orders(Object... arguments) {
        Object[] all = new Object[arguments.length + 3];
        all[0] = "orders";
        all[1] = "--catalogue";
        all[2] = TEXTBOOK;
        System.arraycopy(arguments, 0, all, 3, arguments.length);
        return Ran.boltlore(all);
    }

    @Test
    void counts_the_valid_orders_with_and_without_choices() {
        assertThat(orders("shirt").out().strip()).isEqualTo("11 valid orders in all.");
        assertThat(orders("shirt", "size=small").out().strip()).isEqualTo("1 valid order keeps these choices.");
        assertThat(orders("shirt", "size=small", "print=stw").out().strip())
                .isEqualTo("0 valid orders keep these choices; 'boltlore choose' says why.");
    }

    @Test
    void says_which_orders_bring_a_part_and_their_share() {
        assertThat(orders("phone", "--with", "LENS", "--with", "SHELL").out())
                .contains("In orders with: With camera.")
                .contains("In 4 of 14 orders, 28.57 %.")
                .contains("In every order.");
        assertThat(orders("phone", "--with", "FILM-A").out()).contains("In no order.");
    }

    @Test
    void says_whether_parts_meet_with_an_order_or_the_reason() {
        Ran meet = orders("phone", "--together", "LENS", "SHELL");
        Ran never = orders("phone", "screen=basic", "--together", "LENS", "SHELL");

        assertThat(meet.out()).contains("ship together, for example with:").contains("camera=yes");
        assertThat(never.out().replaceAll("\\s+", " "))
                .contains("never ship together, because Basic screen is chosen. Pictures need the high resolution.");
    }

    @Test
    void lists_what_every_order_brings() throws IOException {
        JsonNode sure = new ObjectMapper()
                .readTree(orders("phone", "camera=yes", "--certain", "--json").out());

        assertThat(sure.get("completions").asText()).isEqualTo("4");
        assertThat(sure.get("parts").get(0).get("part").asText()).isEqualTo("LENS");
        assertThat(sure.get("parts").get(0).get("atLeast").asText()).isEqualTo("2");
        assertThat(sure.get("parts").get(1).get("part").asText()).isEqualTo("SHELL");
    }

    @Test
    void names_the_nearest_part() {
        assertThat(orders("phone", "--with", "LENZ").err()).contains("Did you mean 'LENS'?");
        assertThat(orders("phone", "--with", "LENZ").exit()).isEqualTo(Exit.FAULTS);
    }
}
