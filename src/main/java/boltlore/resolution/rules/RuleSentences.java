package boltlore.resolution.rules;

import boltlore.resolution.FindingKind;
import boltlore.resolution.Way;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.kie.api.definition.rule.Rule;

/**
 * The rules' names by what they conclude: the one place where a rule's sentence is written is the rule. A rule says what
 * it concludes for people beside its name: a finding of that kind, or a reason of that way.
 */
public final class RuleSentences {

    private static final Map<FindingKind, String> FINDINGS = by("finds", FindingKind::valueOf);
    private static final Map<Way, String> REASONS = by("gives", Way::valueOf);

    private RuleSentences() {}

    /** The rule by which a part is in the kit. */
    public static String say(Way way) {
        return Optional.ofNullable(REASONS.get(way)).orElseThrow();
    }

    /** The rule that a finding breaks; empty where no rule finds it, but the order or its limits. */
    public static Optional<String> say(FindingKind kind) {
        return Optional.ofNullable(FINDINGS.get(kind));
    }

    private static <T> Map<T, String> by(String tag, Function<String, T> read) {
        return RuleBase.rules()
                .filter(rule -> rule.getMetaData().containsKey(tag))
                .collect(Collectors.toUnmodifiableMap(
                        rule -> read.apply(String.valueOf(rule.getMetaData().get(tag))), Rule::getName));
    }
}
