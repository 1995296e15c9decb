package boltlore.trades.coating;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SampledPiecesTest {

    @Test
    void each_row_gives_one_piece_first() {
        assertThat(SampledPieces.draw(List.of(5, 5, 5), 3)).containsExactly(1, 1, 1);
    }

    @Test
    void the_rest_is_taken_in_turn() {
        assertThat(SampledPieces.draw(List.of(5, 5, 5), 5)).containsExactly(2, 2, 1);
    }

    @Test
    void no_row_gives_more_than_it_has() {
        assertThat(SampledPieces.draw(List.of(1, 9), 6)).containsExactly(1, 5);
    }

    @Test
    void more_rows_than_the_sample_give_one_each_all_the_same() {
        assertThat(SampledPieces.draw(List.of(4, 4, 4), 2)).containsExactly(1, 1, 1);
    }

    @Test
    void a_sample_larger_than_the_batch_is_the_whole_batch() {
        assertThat(SampledPieces.draw(List.of(1, 2), 10)).containsExactly(1, 2);
    }
}
