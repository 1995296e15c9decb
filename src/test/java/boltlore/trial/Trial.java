package boltlore.trial;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Caution;
import boltlore.catalogue.Companion;
import boltlore.catalogue.Condition;
import boltlore.catalogue.EffectivityScale;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.EndOfLine;
import boltlore.catalogue.Family;
import boltlore.catalogue.Finish;
import boltlore.catalogue.FinishRule;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Pair;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.catalogue.PublicLead;
import boltlore.catalogue.Role;
import boltlore.catalogue.Weights;
import boltlore.choices.Choices;
import boltlore.measure.OptionName;
import boltlore.measure.PartNumber;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** A catalogue with the one family 'trial'. */
public final class Trial {

    public static final String FAMILY = "trial";

    private final List<Option> options = new ArrayList<>();
    private final List<Limit> limits = new ArrayList<>();
    private final Map<String, FinishRule> roles = new LinkedHashMap<>();
    private final List<Pair> pairs = new ArrayList<>();
    private final List<Position> positions = new ArrayList<>();
    private final List<Companion> companions = new ArrayList<>();
    private final List<PublicLead> leads = new ArrayList<>();
    private final Map<PartNumber, Part> parts = new TreeMap<>();
    private final Map<String, Finish> finishes = new TreeMap<>();
    private final Map<String, Caution> cautions = new TreeMap<>();

    public Trial option(String name, String... values) {
        return option(name, null, List.of(values).stream().map(Say::value).toList());
    }

    public Trial option(String name, @Nullable Role role, List<OptionValue> values) {
        options.add(new Option(new OptionName(name), "Which " + name + "?", role, values, null, List.of()));
        return this;
    }

    /** A question with several answers, which is an option for each of them. */
    public Trial several(String name, String... answers) {
        for (String answer : answers) {
            Option.Group group = new Option.Group(new OptionName(name), "Which " + name + "?", answer);
            options.add(new Option(
                    group.member(),
                    answer + "?",
                    null,
                    List.of(Say.value("yes"), Say.value("no")),
                    null,
                    List.of(),
                    group,
                    null));
        }
        return this;
    }

    /** Days or chassis numbers that lines begin or end at. */
    public Trial scale(EffectivityScale scale) {
        options.add(scale.option());
        return this;
    }

    public Trial never(String name, Condition condition) {
        limits.add(new Limit(name, "It cannot be built.", null, condition, null));
        return this;
    }

    public Trial limit(Limit limit) {
        limits.add(limit);
        return this;
    }

    public Trial role(String role, FinishRule rule) {
        roles.put(role, rule);
        return this;
    }

    public Trial finish(Finish finish) {
        finishes.put(finish.name(), finish);
        return this;
    }

    public Trial pair(Pair pair) {
        pairs.add(pair);
        return this;
    }

    public Trial part(TrialPart part) {
        Part done = part.done();
        parts.put(done.number(), done);
        return this;
    }

    public Trial position(TrialPosition position) {
        positions.add(position.done());
        return this;
    }

    public Trial companion(Companion companion) {
        companions.add(companion);
        return this;
    }

    public Trial lead(String part, int phases, String amps) {
        leads.add(new PublicLead(new PartNumber(part), phases, new BigDecimal(amps)));
        return this;
    }

    public Trial caution(String code, String... sheets) {
        cautions.put(code, new Caution(code, Wording.english("Take care."), List.of(sheets), List.of()));
        return this;
    }

    public Catalogue catalogue() {
        Family family = new Family(
                FAMILY,
                Wording.english("Trial"),
                null,
                List.copyOf(options),
                List.copyOf(limits),
                roles,
                List.copyOf(pairs),
                List.copyOf(positions),
                List.copyOf(companions),
                List.of(),
                Weights.NONE,
                electrics(),
                EndOfLine.NONE,
                List.of(),
                Fits.NONE);
        return new Catalogue(TrialWorkshop.with(cautions), finishes, Map.of(), parts, Map.of(FAMILY, family), "trial");
    }

    private Electrics electrics() {
        return new Electrics(
                null,
                null,
                null,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.copyOf(leads),
                List.of(),
                List.of());
    }

    /** A choice in this family: option, value, option, value … */
    public static Choices choose(Catalogue catalogue, String... optionsAndValues) {
        Map<OptionName, String> values = new LinkedHashMap<>();
        for (int at = 0; at < optionsAndValues.length; at += 2) {
            values.put(new OptionName(optionsAndValues[at]), optionsAndValues[at + 1]);
        }
        return Choices.of(catalogue.family(FAMILY), values);
    }
}
