package boltlore.coating;

import boltlore.catalogue.Booth;
import boltlore.catalogue.Coats;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The order in which powders go through the booths: what is in a booth is used up first, then the batches in their order,
 * but a powder that a later coat still waits for comes after the coat below it, so that it is sprayed once.
 */
public final class PowderRuns {

    private final List<OvenBatch> batches;
    private final Map<String, String> inBooth = new LinkedHashMap<>();
    /** For each batch how many of its coats are done. */
    private final int[] done;

    private final List<PowderRun> runs = new ArrayList<>();

    private PowderRuns(List<OvenBatch> batches, List<Booth> booths) {
        this.batches = batches;
        this.done = new int[batches.size()];
        booths.forEach(booth -> inBooth.put(booth.name(), booth.holdsPowder()));
    }

    static List<PowderRun> of(List<OvenBatch> batches, List<Booth> booths) {
        PowderRuns sequence = new PowderRuns(batches, booths);
        while (!sequence.ready().isEmpty()) {
            sequence.run(sequence.nextPowder());
        }
        return List.copyOf(sequence.runs);
    }

    /** How often a booth is cleaned down: runs − 1, and 1 more where the first powder is not the one in the booth. */
    public static long changeOvers(List<PowderRun> runs) {
        return runs.stream().filter(PowderRun::changeOver).count();
    }

    private void run(String powder) {
        String booth = boothFor(powder);
        boolean changeOver = !powder.equals(inBooth.put(booth, powder));
        List<PowderRun.Pass> passes = new ArrayList<>();
        ready().forEach(batch -> spray(batch, powder, passes));
        runs.add(new PowderRun(powder, booth, changeOver, List.copyOf(passes)));
    }

    private void spray(int batch, String powder, List<PowderRun.Pass> passes) {
        while (!finished(batch) && next(batch).equals(powder)) {
            done[batch]++;
            int coats = batches.get(batch).finish().coats().size();
            passes.add(new PowderRun.Pass(batches.get(batch).number(), done[batch], coats));
        }
    }

    /** The booth that holds the powder, else the first. */
    private String boothFor(String powder) {
        return inBooth.entrySet().stream()
                .filter(entry -> entry.getValue().equals(powder))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseGet(() -> inBooth.keySet().stream().findFirst().orElse(""));
    }

    private String nextPowder() {
        List<Integer> ready = ready();
        return ready.stream()
                .map(this::next)
                .min(Comparator.comparing(this::awaited).thenComparing(powder -> !inBooth.containsValue(powder)))
                .orElseThrow();
    }

    /** Whether a coat that cannot be sprayed yet takes that powder. */
    private boolean awaited(String powder) {
        return ready().stream()
                .anyMatch(batch -> batches.get(batch).finish().coats().stream()
                        .skip(done[batch] + 1L)
                        .map(Coats::powder)
                        .anyMatch(powder::equals));
    }

    private List<Integer> ready() {
        return IntStream.range(0, batches.size())
                .filter(batch -> !finished(batch))
                .boxed()
                .toList();
    }

    private boolean finished(int batch) {
        return done[batch] >= batches.get(batch).finish().coats().size();
    }

    private String next(int batch) {
        return batches.get(batch).finish().coats().get(done[batch]).powder();
    }
}
