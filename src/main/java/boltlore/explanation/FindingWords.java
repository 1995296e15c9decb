package boltlore.explanation;

import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Position;
import boltlore.choices.Choices;
import boltlore.findings.Findings;
import boltlore.measure.OptionName;
import boltlore.measure.Wording;
import boltlore.power.ChosenPower;
import boltlore.power.Power;
import boltlore.resolution.Finding;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Puts what the rules have concluded about a kit into sentences: names become what people call the things. */
public final class FindingWords {

    private static final Wording NOTHING = Wording.english("");

    private final Family family;

    public FindingWords(Family family) {
        this.family = family;
    }

    /** The sentence in English, without the figures of any order. */
    public String of(Finding concluded) {
        return in(concluded, NOTHING, NOTHING, Optional.empty()).says();
    }

    /** All that was concluded of the kit with these choices. */
    public Findings of(Collection<Finding> concluded, Choices choices) {
        Wording charging =
                behind(ChosenPower.charging(choices), "; effective ", "; wirksam sind ", " ; puissance effective : ");
        Wording outlet = behind(
                ChosenPower.outlet(choices), "; the outlet gives ", "; die Steckdose gibt ", " ; la prise fournit ");
        return concluded.stream()
                .map(one -> in(one, charging, outlet, Optional.of(choices)))
                .collect(Findings.collected());
    }

    private static Wording behind(Optional<Power> power, String english, String german, String french) {
        return power.map(known -> new Wording(Map.of(
                        "en",
                        english + known.says("en"),
                        "de",
                        german + known.says("de"),
                        "fr",
                        french + known.says("fr"))))
                .orElse(NOTHING);
    }

    /** What is left at a public point with the kit's own lead. */
    private Wording left(String lead, Choices choices) {
        Optional<Power> left = family.electrics().leads().stream()
                .filter(each -> each.part().text().equals(lead))
                .findFirst()
                .flatMap(each -> ChosenPower.through(each, choices));
        return behind(left, "; at public points ", "; an Ladesäulen bleiben ", " ; aux bornes publiques, il reste ");
    }

    private boltlore.findings.Finding in(
            Finding concluded, Wording charging, Wording outlet, Optional<Choices> choices) {
        String subject = concluded.subject();
        String detail = concluded.detail();
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("subject", subject);
        data.put("detail", detail);
        data.put("position", position(subject));
        data.put("other", position(detail));
        data.put("line", line(subject));
        data.put("value", value(subject));
        data.put("chosen", value(detail));
        data.put("asks", option(subject).map(Option::asks).orElse(subject));
        data.put("answer", answer(subject, detail));
        data.put("because", because(subject));
        data.put("blank", detail.isEmpty() ? "" : ", " + detail);
        data.put("power", charging);
        data.put("outlet", outlet);
        data.put("left", choices.map(of -> left(subject, of)).orElse(NOTHING));
        return new boltlore.findings.Finding(concluded.kind(), subject, data);
    }

    private String because(String limit) {
        return family.limits().stream()
                .filter(each -> each.name().equals(limit))
                .map(Limit::because)
                .findFirst()
                .orElse(limit);
    }

    private Optional<Option> option(String name) {
        return family.option(new OptionName(name));
    }

    private Wording answer(String option, String value) {
        return option(option)
                .flatMap(known -> known.value(value))
                .map(OptionValue::says)
                .orElse(Wording.english(value));
    }

    /** What a value is called; of options with values of the same name, the one that has a role. */
    private Wording value(String value) {
        return family.options().stream()
                .sorted(Comparator.comparing(option -> option.role() == null))
                .map(option -> option.value(value))
                .flatMap(Optional::stream)
                .map(OptionValue::says)
                .findFirst()
                .orElse(Wording.english(value));
    }

    private Wording position(String name) {
        return family.positions().stream()
                .filter(position -> position.name().text().equals(name))
                .map(Position::says)
                .map(says -> says.with(" (" + name + ")"))
                .findFirst()
                .orElse(Wording.english(name));
    }

    /** What stands at the line's position is called, and the line. */
    public Wording line(String name) {
        return family.positions().stream()
                .filter(position -> position.lines().stream()
                        .anyMatch(line -> line.name().text().equals(name)))
                .map(Position::says)
                .map(says -> says.with(" (" + name + ")"))
                .findFirst()
                .orElse(Wording.english(name));
    }
}
