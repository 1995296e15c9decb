package boltlore.resolution.rules;

import static boltlore.resolution.rules.Named.byLine;
import static boltlore.resolution.rules.Named.byPart;
import static boltlore.resolution.rules.Named.line;
import static boltlore.resolution.rules.Named.part;
import static boltlore.resolution.rules.Named.position;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.measure.LineName;
import boltlore.resolution.Reason;
import boltlore.resolution.Way;
import boltlore.resolution.rules.Facts.Brings;
import boltlore.resolution.rules.Facts.Carries;
import boltlore.resolution.rules.Facts.CaseAsksEmpty;
import boltlore.resolution.rules.Facts.CaseAsksFilled;
import boltlore.resolution.rules.Facts.ConditionCase;
import boltlore.resolution.rules.Facts.ConditionKey;
import boltlore.resolution.rules.Facts.Filled;
import boltlore.resolution.rules.Facts.Holds;
import boltlore.resolution.rules.Facts.InKit;
import boltlore.resolution.rules.Facts.LineOffered;
import boltlore.resolution.rules.Facts.LineSelected;
import boltlore.resolution.rules.Facts.OmissionsStageDone;
import boltlore.resolution.rules.Facts.PickWatched;
import boltlore.resolution.rules.Facts.StaysOut;
import boltlore.resolution.rules.Facts.ToPick;
import boltlore.resolution.rules.Facts.Unused;
import boltlore.resolution.rules.Facts.Useful;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Conclusions that follow from conclusions of the same rules, far down. */
class ChainsTest {

    private static final ConditionKey COVER = new ConditionKey(1_000);

    /** A line brings P0, P0 contains P1, P1 needs P2, P2 contains P3 … */
    private static List<Object> chain(String line, int length) {
        List<Object> facts = new ArrayList<>();
        facts.add(new LineSelected(line(line), position(line), true));
        facts.add(new Brings(byLine(line), Way.LINE, part(line + 0), ConditionKey.ALWAYS));
        for (int at = 0; at < length; at++) {
            Way way = at % 2 == 0 ? Way.CONTAINS : Way.NEEDS;
            facts.add(new Brings(byPart(line + at), way, part(line + (at + 1)), ConditionKey.ALWAYS));
            facts.add(new PickWatched(byPart(line + at), part(line + at)));
        }
        return facts;
    }

    /** Position 0 is filled unless the cover is; position 1 is filled when position 0 is, position 2 when position 1 is … */
    private static List<Object> positions(int length) {
        List<Object> facts = new ArrayList<>();
        for (int at = 0; at < length; at++) {
            String name = "p" + at;
            facts.add(new LineOffered(line(name), position(name), false, new ConditionKey(at)));
            facts.add(new ConditionCase(new ConditionKey(at), 0));
            facts.add(
                    at == 0
                            ? new CaseAsksEmpty(new ConditionKey(0), 0, position("cover"))
                            : new CaseAsksFilled(new ConditionKey(at), 0, position("p" + (at - 1))));
        }
        return facts;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 10, 40})
    void a_chain_of_parts_goes_to_its_end_and_of_what_stays_out_none_begins(int length) {
        try (RuleSession session = new RuleSession()) {
            session.insert(
                    List.of(new Holds(ConditionKey.ALWAYS), new StaysOut(line("out")), new OmissionsStageDone()));
            session.insert(chain("out", length));
            session.insert(chain("in", length));
            session.conclude();

            assertThat(session.all(Reason.class))
                    .hasSize(length + 1)
                    .allSatisfy(reason -> assertThat(reason.asker().name()).startsWith("in"));
            assertThat(session.all(InKit.class)).hasSize(length + 2);
            assertThat(session.all(ToPick.class))
                    .allSatisfy(pick -> assertThat(pick.part().name()).startsWith("in"));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 10, 40})
    void a_chain_of_filled_positions_goes_to_its_end(int length) {
        try (RuleSession session = new RuleSession()) {
            session.insert(positions(length));
            session.conclude();

            assertThat(session.all(Filled.class)).hasSize(length);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 10, 40})
    void a_chain_of_filled_positions_is_withdrawn_to_its_end_whatever_was_said_first(int length) {
        for (long seed = 0; seed < 20; seed++) {
            List<Object> facts = new ArrayList<>(positions(length));
            facts.add(new LineOffered(line("cover"), position("cover"), false, COVER));
            facts.add(new ConditionCase(COVER, 0));
            Collections.shuffle(facts, new Random(seed));
            try (RuleSession session = new RuleSession()) {
                session.insert(facts);
                session.conclude();

                assertThat(session.all(Filled.class)).containsExactly(new Filled(position("cover")));
                assertThat(session.all(LineSelected.class)).hasSize(1);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 10, 40})
    void a_chain_of_filled_positions_that_was_concluded_is_withdrawn_to_its_end(int length) {
        try (RuleSession session = new RuleSession()) {
            session.insert(positions(length));
            session.conclude();
            session.insert(List.of(
                    new LineOffered(line("cover"), position("cover"), false, COVER), new ConditionCase(COVER, 0)));
            session.conclude();

            assertThat(session.all(Filled.class)).containsExactly(new Filled(position("cover")));
        }
    }

    /** Bracket 0 carries position 0, which the cover empties; bracket 1 carries bracket 0, bracket 2 bracket 1 … */
    private static List<Object> stack(int height) {
        List<Object> facts = new ArrayList<>(positions(1));
        for (int at = 0; at < height; at++) {
            LineName bracket = line("b" + at);
            facts.add(new LineOffered(bracket, position("b" + at), true, ConditionKey.ALWAYS));
            facts.add(new Carries(bracket, position(at == 0 ? "p0" : "b" + (at - 1))));
        }
        facts.add(new Holds(ConditionKey.ALWAYS));
        return facts;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 10, 40})
    void a_stack_of_brackets_is_useful_to_its_foot_and_of_no_use_when_the_top_is_taken_back(int height) {
        for (long seed = 0; seed < 20; seed++) {
            List<Object> facts = new ArrayList<>(stack(height));
            Collections.shuffle(facts, new Random(seed));
            List<Object> cover = List.of(
                    new LineOffered(line("cover"), position("cover"), false, COVER), new ConditionCase(COVER, 0));
            try (RuleSession late = new RuleSession();
                    RuleSession atOnce = new RuleSession()) {
                late.insert(facts);
                late.conclude();
                assertThat(late.all(Useful.class)).hasSize(height);
                late.insert(cover);
                late.conclude();
                assertThat(late.all(Useful.class)).isEmpty();
                assertThat(late.all(Unused.class)).hasSize(height);

                facts.addAll(cover);
                Collections.shuffle(facts, new Random(seed));
                atOnce.insert(facts);
                atOnce.conclude();
                assertThat(atOnce.all(Useful.class)).isEmpty();
                assertThat(atOnce.all(Unused.class)).hasSize(height);
            }
        }
    }
}
