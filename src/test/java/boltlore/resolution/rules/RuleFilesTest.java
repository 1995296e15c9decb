package boltlore.resolution.rules;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.resolution.FindingKind;
import boltlore.resolution.Way;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class RuleFilesTest {

    private static final int SCREEN_LINES = 120;
    private static final int MOST_PATTERNS = 5;

    /** Words of the machinery; whoever asks why a part is in the kit has never heard them. */
    private static final Pattern MACHINERY =
            Pattern.compile("(?i)\\b(fact|asker|target|key|flag|null|boolean|true|false|object|instance|string|record"
                    + "|entity|node|enum|rule|session|logical|insert|fires?|dnf|predicate)s?\\b");

    static List<RuleFile> files() {
        return RuleFile.all();
    }

    static Stream<RuleFile.Rule> rules() {
        return files().stream().flatMap(file -> file.rules().stream());
    }

    static List<String> names() {
        return files().stream().flatMap(file -> file.ruleNames().stream()).toList();
    }

    @Test
    void there_are_files_of_rules() {
        assertThat(files()).isNotEmpty();
        assertThat(rules().map(RuleFile.Rule::name)).containsExactlyElementsOf(names());
    }

    @Test
    void no_two_rules_bear_one_name() {
        assertThat(names()).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("names")
    void a_name_is_a_plain_sentence(String name) {
        assertThat(name)
                .matches("[A-Z][a-z]*( (V2L|[a-z]+([-'][a-z]+)*),?){4,18}")
                .doesNotContainPattern(MACHINERY);
    }

    @ParameterizedTest
    @EnumSource(Way.class)
    void why_says_a_reason_in_the_words_of_the_rule_that_gives_it(Way way) {
        assertThat(rules().filter(rule ->
                        rule.then().contains("Reason( ") && rule.then().contains("Way." + way.name())))
                .extracting(RuleFile.Rule::name)
                .containsExactly(RuleSentences.say(way));
    }

    @ParameterizedTest
    @EnumSource(FindingKind.class)
    void a_finding_is_told_with_the_words_of_the_rule_that_concludes_it(FindingKind kind) {
        assertThat(rules().filter(rule -> rule.then().contains("new Finding( FindingKind." + kind.name() + ","))
                        .map(RuleFile.Rule::name))
                .containsExactlyElementsOf(RuleSentences.say(kind).stream().toList());
    }

    @ParameterizedTest
    @MethodSource("files")
    void a_file_fits_a_screen_and_belongs_to_the_package(RuleFile file) {
        assertThat(file.text().lines().count()).isLessThanOrEqualTo(SCREEN_LINES);
        assertThat(file.text()).startsWith("package boltlore.resolution.rules;\n");
    }

    @ParameterizedTest
    @MethodSource("files")
    void nothing_steers_the_order_of_firing_or_reaches_outside(RuleFile file) {
        assertThat(file.text())
                .doesNotContainPattern(
                        "\\b(salience|agenda-group|activation-group|ruleflow-group|auto-focus|lock-on-active"
                                + "|no-loop|enabled|duration|timer|date-effective|date-expires|eval|global|function|query"
                                + "|modify|update|retract|delete|insert|drools|kcontext)\\b");
    }

    @ParameterizedTest
    @MethodSource("rules")
    void a_rule_draws_one_conclusion_and_does_nothing_else(RuleFile.Rule rule) {
        assertThat(rule.then().strip())
                .matches("insertLogical\\( new \\w+(\\.\\w+)?\\( .* \\) \\);")
                .doesNotContain("\n");
        assertThat(rule.then().split(";", -1)).hasSize(2);
    }

    @ParameterizedTest
    @MethodSource("rules")
    void a_rule_asks_for_little(RuleFile.Rule rule) {
        assertThat(rule.when().strip().lines().skip(1)).hasSizeBetween(1, MOST_PATTERNS);
    }
}
