package boltlore.resolution.rules;

import static boltlore.resolution.rules.Named.byLine;
import static boltlore.resolution.rules.Named.byPart;
import static boltlore.resolution.rules.Named.line;
import static boltlore.resolution.rules.Named.part;
import static boltlore.resolution.rules.Named.position;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.resolution.Reason;
import boltlore.resolution.Way;
import boltlore.resolution.rules.facts.Brings;
import boltlore.resolution.rules.facts.Called;
import boltlore.resolution.rules.facts.Holds;
import boltlore.resolution.rules.facts.InKit;
import boltlore.resolution.rules.facts.PickWatched;
import boltlore.resolution.rules.facts.StaysOut;
import boltlore.resolution.rules.facts.ToPick;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A line brings P0, P0 contains P1, P1 needs P2, P2 contains P3 … */
class ChainsTest {

    private static List<Object> chain(String line, int length) {
        List<Object> facts = new ArrayList<>();
        facts.add(new Called(line(line), position(line), true));
        facts.add(new Brings(byLine(line), Way.LINE, part(line + 0), Holds.ALWAYS));
        for (int at = 0; at < length; at++) {
            Way way = at % 2 == 0 ? Way.CONTAINS : Way.NEEDS;
            facts.add(new Brings(byPart(line + at), way, part(line + (at + 1)), Holds.ALWAYS));
            facts.add(new PickWatched(byPart(line + at), part(line + at)));
        }
        return facts;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 10, 40})
    void a_chain_goes_to_its_end_with_the_line_that_began_it_and_another_stays(int length) {
        try (RuleSession session = new RuleSession()) {
            session.insert(List.of(new Holds(Holds.ALWAYS)));
            session.insert(chain("out", length));
            session.insert(chain("in", length));
            session.conclude();
            assertThat(session.all(Reason.class)).hasSize(2 * (length + 1));

            session.insert(List.of(new StaysOut(line("out"))));
            session.conclude();

            assertThat(session.all(Reason.class))
                    .hasSize(length + 1)
                    .allSatisfy(reason -> assertThat(reason.asker().name()).startsWith("in"));
            assertThat(session.all(InKit.class)).hasSize(length + 2);
            assertThat(session.all(ToPick.class))
                    .allSatisfy(pick -> assertThat(pick.part().name()).startsWith("in"));
        }
    }
}
