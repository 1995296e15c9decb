package boltlore.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A path of the desk")
class RoutesTest {

    private static final Room ROOM = new Room() {
        @Override
        public Role role() {
            return Role.ANY;
        }

        @Override
        public String path() {
            return "/a";
        }

        @Override
        public String says() {
            return "A";
        }

        @Override
        public void open(Doors doors) {
            doors.look("/a/{order}", call -> new Answer.Missing("named " + call.path("order")));
            doors.look("/a/all", call -> new Answer.Missing("all"));
            doors.act("/a/{order}/{part}", call -> new Answer.Missing("acted"));
        }
    };

    private static Map<String, String> names(boolean acts, String path) {
        return new Routes(List.of(ROOM)).find(acts, path).orElseThrow().names();
    }

    @Test
    void hands_on_what_stands_in_the_place_of_names_decoded() {
        assertThat(names(false, "/a/BL-1")).isEqualTo(Map.of("order", "BL-1"));
        assertThat(names(false, "/a/two%20words+more")).isEqualTo(Map.of("order", "two words+more"));
        assertThat(names(true, "/a/x/y")).isEqualTo(Map.of("order", "x", "part", "y"));
    }

    @Test
    void that_says_all_its_words_goes_before_one_that_names_something() {
        assertThat(names(false, "/a/all")).isEmpty();
    }

    @Test
    void that_no_room_has_is_none_nor_is_one_that_is_only_acted_on() {
        Routes routes = new Routes(List.of(ROOM));
        assertThat(routes.find(false, "/a")).isEmpty();
        assertThat(routes.find(false, "/a/")).isEmpty();
        assertThat(routes.find(false, "/a/x/y")).isEmpty();
        assertThat(routes.find(true, "/a/x")).isEmpty();
        assertThat(Routes.NONE.find(false, "/a/all")).isEmpty();
    }
}
