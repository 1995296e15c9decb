package boltlore.explanation;

import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Position;
import boltlore.measure.OptionName;
import boltlore.measure.Wording;
import boltlore.resolution.Finding;
import java.util.Comparator;
import java.util.Optional;

/** Says a finding as a sentence that tells a person what to look at. */
public final class FindingWords {

    private final Family family;

    public FindingWords(Family family) {
        this.family = family;
    }

    public String of(Finding finding) {
        return switch (finding.kind()) {
            case CONFLICT, INCOMPLETE, USUAL_TAKEN, ERA_AGAINST_BUILD_DATE -> ofChoices(finding);
            case OVERLAP, HOLE, BRACKET_MISSING, ORPHAN, STRAY -> ofPosition(finding);
            case WRONG_HAND, BOTH_HANDS, NEITHER_HAND, UNEQUAL_PAIR -> ofPair(finding);
            case UNUSED, KEPT, LEFT_OUT -> ofBracket(finding);
            case COMPANION_MISSING, INTERLOCK_OPEN, CABLE_OUTSIDE_WINDOW, NO_MASK, LEAF_WITHOUT_BIN -> ofPart(finding);
            case WAIVED -> "Waived, " + finding.subject() + ": " + finding.detail();
            case EXTRA ->
                finding.subject() + " is an extra, outside the universal kit and its proofs: " + finding.detail();
            default -> ofElectrics(finding);
        };
    }

    private String ofChoices(Finding finding) {
        return switch (finding.kind()) {
            case CONFLICT ->
                family.limits().stream()
                        .filter(limit -> limit.name().equals(finding.subject()))
                        .map(Limit::because)
                        .findFirst()
                        .orElse(finding.subject());
            case INCOMPLETE -> "Not decided: " + asks(finding.subject());
            case USUAL_TAKEN ->
                "The default was taken on request: " + asks(finding.subject()) + " "
                        + says(finding.subject(), finding.detail());
            default ->
                says(finding.subject()) + " was chosen, but the build date " + finding.detail()
                        + " belongs to another era: look at the donor vehicle";
        };
    }

    private String ofPosition(Finding finding) {
        String position = position(finding.subject());
        return switch (finding.kind()) {
            case OVERLAP -> position + ": two alternatives apply where one is allowed: " + finding.detail();
            case HOLE -> position + ": no part is selected for a required position";
            case BRACKET_MISSING ->
                position + " is fitted, but none of its brackets is in the kit: " + finding.detail();
            case ORPHAN -> position + " is filled, but " + position(finding.detail()) + ", on which it hangs, is not";
            default -> position + " is filled although it is not due";
        };
    }

    private static String ofPair(Finding finding) {
        String pair = "Pair " + finding.subject();
        return switch (finding.kind()) {
            case WRONG_HAND -> pair + ": the hand in the kit is not the driver's side";
            case BOTH_HANDS -> pair + ": left and right are both in the kit, one is to ship";
            case NEITHER_HAND -> pair + ": neither hand is in the kit";
            default -> pair + ": there are not as many left as right";
        };
    }

    private String ofBracket(Finding finding) {
        String line = line(finding.subject());
        return switch (finding.kind()) {
            case UNUSED ->
                line + " carries nothing in this kit: decide whether it is left out or kept; until then it"
                        + " is neither coated nor picked";
            case KEPT -> line + " carries nothing in this kit and is kept on purpose";
            default -> line + " carries nothing in this kit and is left out";
        };
    }

    private static String ofPart(Finding finding) {
        return switch (finding.kind()) {
            case COMPANION_MISSING ->
                finding.detail() + " expects " + finding.subject() + ", which is not in the kit in that number";
            case INTERLOCK_OPEN ->
                "High-voltage connector " + finding.subject() + " is neither mated nor closed"
                        + (finding.detail().isEmpty() ? ": no blank is named" : " by its blank " + finding.detail())
                        + ": the interlock stays open";
            case CABLE_OUTSIDE_WINDOW -> "Cable line " + finding.subject() + " is " + finding.detail();
            case NO_MASK ->
                finding.subject() + " has a " + finding.detail()
                        + " to be masked, and the coating shop holds no mask of that size";
            default -> finding.subject() + " is picked on its own but has no bin";
        };
    }

    private String ofElectrics(Finding finding) {
        String subject = says(finding.subject());
        String detail = says(finding.detail());
        return switch (finding.kind()) {
            case EXPORT_SOCKET_OF_ANOTHER_MARKET -> subject + " is not a socket of the market " + detail;
            case EXPORT_NEEDS_TWO_WAY_CHARGER ->
                subject + " needs a charger that feeds out; " + detail + " only charges";
            case EXPORT_ABOVE_RATING -> subject + " gives more than " + detail + " may feed out";
            case CHARGER_ABOVE_INLET -> subject + " draws more current than " + detail + " carries";
            case CHARGER_PHASES_ABOVE_INLET ->
                subject + " has more phases than the inlet " + detail + ": it charges on the inlet's phases only";
            case CHARGER_PHASES_ABOVE_SUPPLY ->
                subject + " has more phases than the supply " + detail + ": it charges on the supply's phases only";
            case INLET_OF_ANOTHER_MARKET ->
                subject + " is not in use in the market " + detail + ": ask for the vehicle's and the site's plug";
            case LABELS_OF_ANOTHER_MARKET ->
                "Labels and manual in " + subject + " are not in a language of the market " + detail;
            default -> finding.kind().written() + ": " + subject;
        };
    }

    private String asks(String option) {
        return family.option(new OptionName(option)).map(Option::asks).orElse(option);
    }

    private String says(String option, String value) {
        return family.option(new OptionName(option))
                .flatMap(known -> known.value(value))
                .map(OptionValue::says)
                .map(Wording::english)
                .orElse(value);
    }

    /** What a value is called; of options with values of the same name, the one that has a role. */
    private String says(String value) {
        return family.options().stream()
                .sorted(Comparator.comparing(option -> option.role() == null))
                .map(option -> option.value(value))
                .flatMap(Optional::stream)
                .map(OptionValue::says)
                .map(Wording::english)
                .findFirst()
                .orElse(value);
    }

    private String position(String name) {
        return family.positions().stream()
                .filter(position -> position.name().text().equals(name))
                .map(Position::says)
                .map(says -> says.english() + " (" + name + ")")
                .findFirst()
                .orElse(name);
    }

    private String line(String name) {
        return family.positions().stream()
                .filter(position -> position.lines().stream()
                        .anyMatch(line -> line.name().text().equals(name)))
                .map(Position::says)
                .map(says -> says.english() + " (line " + name + ")")
                .findFirst()
                .orElse(name);
    }
}
