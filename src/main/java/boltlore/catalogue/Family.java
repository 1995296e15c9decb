package boltlore.catalogue;

import boltlore.measure.LineName;
import boltlore.measure.OptionName;
import boltlore.measure.PositionName;
import boltlore.measure.Wording;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** One vehicle family with its one universal kit. Lists keep the order of the files. */
public record Family(
        String name,
        Wording says,
        @Nullable Donor donor,
        List<Option> options,
        List<Limit> limits,
        Map<String, FinishRule> finishes,
        List<Pair> pairs,
        List<Position> positions,
        List<Companion> companions,
        List<Accepted> accepted,
        Weights weights,
        Electrics electrics,
        EndOfLine endOfLine,
        List<JointFacts> joints,
        Fits fits,
        Driving driving,
        List<Measure> measures) {

    /** A family that says nothing about driving, and of which nothing is measured on each vehicle. */
    public Family(
            String name,
            Wording says,
            @Nullable Donor donor,
            List<Option> options,
            List<Limit> limits,
            Map<String, FinishRule> finishes,
            List<Pair> pairs,
            List<Position> positions,
            List<Companion> companions,
            List<Accepted> accepted,
            Weights weights,
            Electrics electrics,
            EndOfLine endOfLine,
            List<JointFacts> joints,
            Fits fits) {
        this(
                name,
                says,
                donor,
                options,
                limits,
                finishes,
                pairs,
                positions,
                companions,
                accepted,
                weights,
                electrics,
                endOfLine,
                joints,
                fits,
                Driving.NONE,
                List.of());
    }

    /** A family of which no finding has been accepted, and that says nothing about weights, high voltage, tests and joints. */
    public Family(
            String name,
            Wording says,
            @Nullable Donor donor,
            List<Option> options,
            List<Limit> limits,
            Map<String, FinishRule> finishes,
            List<Pair> pairs,
            List<Position> positions,
            List<Companion> companions) {
        this(
                name,
                says,
                donor,
                options,
                limits,
                finishes,
                pairs,
                positions,
                companions,
                List.of(),
                Weights.NONE,
                Electrics.NONE,
                EndOfLine.NONE,
                List.of(),
                Fits.NONE);
    }

    /** What may be chosen of this family among those options and limits, without anything that it brings. */
    public Family choosing(List<Option> some, List<Limit> kept) {
        return new Family(name, says, null, some, kept, Map.of(), List.of(), List.of(), List.of());
    }

    public Optional<Option> option(OptionName wanted) {
        return options.stream().filter(option -> option.name().equals(wanted)).findFirst();
    }

    /** The answers to a question that takes several; empty where there is no such question. */
    public List<Option> inGroup(OptionName group) {
        return options.stream()
                .filter(option ->
                        option.group() != null && option.group().name().equals(group))
                .toList();
    }

    public Optional<Option> inRole(Role role) {
        return options.stream().filter(option -> option.role() == role).findFirst();
    }

    public Optional<Position> position(PositionName wanted) {
        return positions.stream()
                .filter(position -> position.name().equals(wanted))
                .findFirst();
    }

    /** What its effectivities cut into pieces. */
    public List<EffectivityScale> scales() {
        return options.stream()
                .flatMap(option -> Stream.ofNullable(option.scale()))
                .toList();
    }

    public Stream<Line> lines() {
        return positions.stream().flatMap(position -> position.lines().stream());
    }

    public Optional<Line> line(LineName wanted) {
        return lines().filter(line -> line.name().equals(wanted)).findFirst();
    }
}
