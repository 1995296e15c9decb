package boltlore.proof;

import static boltlore.sketch.PositionSketch.is;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.logic.Deadline;
import boltlore.proof.kinds.Kinds;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.PartSketch;
import boltlore.sketch.PositionSketch;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

/** A proof's time is shared out over its statements, and each answer is told as it comes. */
class ProverTimeTest {

    private static final Catalogue HOLE = new CatalogueSketch()
            .option("drive", "small", "large")
            .part(PartSketch.bought("D"))
            .position(PositionSketch.at("drive")
                    .fill(boltlore.catalogue.Fill.ONE)
                    .line("large", "D", "1", is("drive", "large")))
            .draw();

    private static FamilyProof prove(Deadline deadline, Prover.Progress progress) {
        return Prover.prove(HOLE, HOLE.family(CatalogueSketch.FAMILY), Kinds.all(), deadline, progress);
    }

    @Test
    void a_defect_is_told_when_it_is_found() {
        List<String> told = new ArrayList<>();

        prove(Deadline.NONE, new Prover.Progress() {
            @Override
            public void answered(int answered, int all) {}

            @Override
            public void found(Answer.Defect defect) {
                told.add(defect.statement().title());
            }
        });

        assertThat(told).contains("required part missing: drive");
    }

    @Test
    void one_answer_that_takes_its_whole_share_leaves_time_for_the_others() {
        AtomicLong now = new AtomicLong();
        // The first defect's telling takes half of all the time; the rest is answered in what is left.
        FamilyProof proof = prove(Deadline.in(1_000_000, now::get), new Prover.Progress() {
            @Override
            public void answered(int answered, int all) {}

            @Override
            public void found(Answer.Defect defect) {
                now.compareAndSet(0, 500_000);
            }
        });

        assertThat(proof.only(Answer.Unproved.class)).isEmpty();
    }

    @Test
    void without_any_time_every_statement_is_named_as_not_answered() {
        AtomicLong now = new AtomicLong();
        Deadline deadline = Deadline.in(10, now::get);
        now.set(100);

        FamilyProof proof = prove(deadline, Prover.Progress.NONE);

        assertThat(proof.answers())
                .isNotEmpty()
                .allMatch(answer -> answer instanceof Answer.Unproved || answer instanceof Answer.NotDecided);
    }

    @Test
    void a_part_of_the_time_is_a_share_of_what_is_left_and_no_less_than_a_twentieth() {
        AtomicLong now = new AtomicLong();
        Deadline part = Deadline.in(1_000, now::get).part();

        part.beginOneOf(4);
        now.set(250);
        assertThat(part.passed()).isFalse();
        now.set(251);
        assertThat(part.passed()).isTrue();
        now.set(200);
        part.beginOneOf(5_000);
        now.set(240);
        assertThat(part.passed()).isFalse();
        now.set(241);
        assertThat(part.passed()).isTrue();
    }
}
