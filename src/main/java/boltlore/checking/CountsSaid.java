package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Need;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A sentence that says how many fixings something takes, against the quantity beside it: 'The flange takes six bolts'. */
final class CountsSaid {

    private static final List<String> NUMBERS = List.of(
            "one",
            "two",
            "three",
            "four",
            "five",
            "six",
            "seven",
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen",
            "nineteen",
            "twenty");

    /** At most two words between number and thing: 'four through bolts'. */
    private static final Pattern COUNTED = Pattern.compile("\\b(" + String.join("|", NUMBERS)
            + "|[1-9][0-9]?) (?:[a-z-]+ ){0,2}?(?:bolt|screw|nut|clip|rivet|washer|stud)s?\\b");

    private static final Pattern TWICE = Pattern.compile("\\bat (?:each|both) ends?\\b");

    private CountsSaid() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        Stream<Remark> ofParts =
                catalogue.parts().values().stream().flatMap(part -> of(Said.part(part), part.needs().stream()));
        return Stream.concat(ofParts, catalogue.families().values().stream().flatMap(CountsSaid::ofFamily));
    }

    private static Stream<Remark> ofFamily(Family family) {
        return Stream.concat(
                family.lines().flatMap(line -> of(Said.line(family, line), line.needs().stream())),
                family.companions().stream()
                        .flatMap(companion -> of("part " + companion.part(), companion.needs().stream())));
    }

    private static Stream<Remark> of(String about, Stream<Need> needs) {
        return needs.flatMap(need -> said(need.because())
                .filter(said -> said.compareTo(quantity(need)) != 0)
                .map(said -> new Remark(
                        about,
                        Check.COUNT_SAID,
                        Digits.plain(quantity(need)) + " of " + need.part() + ", because '" + need.because() + "'",
                        Digits.plain(said) + ", as the sentence has it",
                        "Correct the quantity, or the sentence"))
                .stream());
    }

    private static BigDecimal quantity(Need need) {
        return need.ask() instanceof Need.Each each ? each.quantity() : ((Need.AtJoint) need.ask()).atLeast();
    }

    /** Empty where it counts nothing, or more than one thing. */
    static Optional<BigDecimal> said(String sentence) {
        String small = sentence.toLowerCase(Locale.ROOT);
        Matcher counted = COUNTED.matcher(small);
        if (!counted.find()) {
            return Optional.empty();
        }
        int word = NUMBERS.indexOf(counted.group(1));
        BigDecimal number = word < 0 ? new BigDecimal(counted.group(1)) : BigDecimal.valueOf(word + 1L);
        if (counted.find()) {
            return Optional.empty();
        }
        return Optional.of(TWICE.matcher(small).find() ? number.multiply(BigDecimal.valueOf(2)) : number);
    }
}
