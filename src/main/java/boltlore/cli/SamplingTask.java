package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.exports.SheetSet;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.logic.Deadline;
import boltlore.proof.sample.Sampler;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;

/** Finds variants to build on the bench for some families. */
record SamplingTask(
        Catalogue catalogue,
        List<Family> families,
        Sampling.Ways ways,
        ProofFiles files,
        BiFunction<Path, List<SheetSet>, Outcome<List<Path>>> write)
        implements ProofTask {

    @Override
    public Done done(Deadline until, ProofProgress progress) {
        CatalogueSession session = CatalogueSession.of(catalogue);
        List<Sampling> samplings = new ArrayList<>();
        List<String> tooLarge = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        for (Family family : families) {
            progress.of(family.name());
            Sampling.of(session, family, ways, until)
                    .ifPresentOrElse(samplings::add, () -> tooLarge.add(family.name()));
        }
        if (files.witnesses != null) {
            faults.addAll(write.apply(
                            files.witnesses,
                            samplings.stream().map(Sampling::files).toList())
                    .faults());
        }
        return new Sampled(samplings, tooLarge, faults);
    }

    private record Sampled(List<Sampling> samplings, List<String> tooLarge, List<Fault> faults) implements Done {

        @Override
        public JsonOut json() {
            return JsonOut.object()
                    .put("families", JsonOut.list(samplings, Sampling::json))
                    .put("tooLarge", JsonOut.texts(tooLarge));
        }

        @Override
        public void print(Screen screen) {
            samplings.forEach(sampling -> sampling.print(screen));
            tooLarge.forEach(family -> screen.wrapped(
                    0,
                    family + ": too large. Threes are covered up to " + Sampler.MOST_OPTIONS_FOR_THREES
                            + " options; pairs as long as there are fewer than 50 million."));
        }

        @Override
        public int exit() {
            return tooLarge.isEmpty() && samplings.stream().allMatch(Sampling::complete) ? Exit.OK : Exit.UNDECIDED;
        }
    }
}
