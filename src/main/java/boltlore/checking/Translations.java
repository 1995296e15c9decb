package boltlore.checking;

import boltlore.catalogue.Capacity;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Document;
import boltlore.catalogue.EndOfLine;
import boltlore.catalogue.Family;
import boltlore.catalogue.Position;
import boltlore.catalogue.PriceBook;
import boltlore.catalogue.SalesTax;
import boltlore.measure.Wording;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What customers and partners read is there in each of the workshop's languages. */
final class Translations {

    record Text(String about, Wording wording) {}

    private Translations() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        List<String> languages = catalogue.workshop().languages();
        return texts(catalogue).flatMap(text -> check(text, languages));
    }

    /** Each text that people read, and what it is about. */
    static Stream<Text> texts(Catalogue catalogue) {
        return Stream.of(
                        shared(catalogue),
                        ofPrices(catalogue),
                        catalogue.families().values().stream().flatMap(Translations::ofFamily))
                .flatMap(texts -> texts);
    }

    /** Once a workshop names its bags, papers show no code among the names. */
    static Stream<Remark> unnamedBags(Catalogue catalogue) {
        Set<String> named = catalogue.workshop().bags().keySet();
        return named.isEmpty()
                ? Stream.empty()
                : catalogue.families().values().stream()
                        .flatMap(family -> family.positions().stream())
                        .map(Position::bag)
                        .distinct()
                        .filter(bag -> !bag.isEmpty()
                                && !named.contains(bag)
                                && catalogue.shipping().ownCrate(bag).isEmpty())
                        .map(bag -> new Remark(
                                "bag " + bag,
                                Check.TRANSLATION,
                                "'" + bag + "' has no name",
                                "a bag under 'bags' of workshop.json",
                                "Name it there; until then papers print the code"));
    }

    private static Stream<Text> shared(Catalogue catalogue) {
        return Stream.of(
                        catalogue.parts().values().stream().map(part -> new Text(Said.part(part), part.name())),
                        catalogue.parts().values().stream()
                                .flatMap(part -> Stream.ofNullable(part.service())
                                        .map(service -> new Text("service of " + Said.part(part), service.why()))),
                        catalogue.parts().values().stream()
                                .flatMap(part -> Stream.ofNullable(part.upkeep().inspect())
                                        .map(inspect -> new Text("inspection of " + Said.part(part), inspect))),
                        catalogue.parts().values().stream()
                                .flatMap(part -> ofDocuments(part.upkeep().documents(), Said.part(part))),
                        catalogue.parts().values().stream()
                                .flatMap(part -> Stream.ofNullable(part.fixing())
                                        .flatMap(fixing -> Stream.ofNullable(fixing.threadLock()))
                                        .map(lock -> new Text("thread lock of " + Said.part(part), lock))),
                        catalogue.finishes().values().stream()
                                .map(finish -> new Text("finish " + finish.name(), finish.says())),
                        catalogue.workshop().stages().stream()
                                .map(stage -> new Text("fit stage " + stage.name(), stage.says())),
                        catalogue.workshop().bags().entrySet().stream()
                                .map(bag -> new Text("bag " + bag.getKey(), bag.getValue())),
                        catalogue.shipping().crates().stream()
                                .map(crate -> new Text("crate " + crate.name(), crate.says())),
                        catalogue.shipping().ownCrates().stream()
                                .map(own -> new Text("crate " + own.bag(), own.says())),
                        ofCapacity(catalogue.capacity()),
                        catalogue.workshop().cautions().values().stream()
                                .map(caution -> new Text("caution " + caution.code(), caution.says())))
                .flatMap(texts -> texts);
    }

    private static Stream<Text> ofCapacity(@Nullable Capacity capacity) {
        return capacity == null
                ? Stream.of()
                : Stream.concat(
                        capacity.centres().stream()
                                .map(centre -> new Text("work centre " + centre.name(), centre.says())),
                        capacity.daysOff().stream().map(off -> new Text("day off " + off.from(), off.says())));
    }

    private static Stream<Text> ofDocuments(List<Document> documents, String owner) {
        return documents.stream().map(document -> new Text("document of " + owner, document.says()));
    }

    /** What stands on quotations. */
    private static Stream<Text> ofPrices(Catalogue catalogue) {
        PriceBook prices = catalogue.prices();
        return prices == null
                ? Stream.of()
                : Stream.of(
                                prices.excluded().stream().map(says -> new Text("what quotations exclude", says)),
                                prices.taxes().entrySet().stream().flatMap(tax -> ofTax(tax.getKey(), tax.getValue())),
                                prices.subSystems().entrySet().stream()
                                        .map(called -> new Text("sub-system " + called.getKey(), called.getValue())))
                        .flatMap(texts -> texts);
    }

    private static Stream<Text> ofTax(String market, SalesTax tax) {
        return Stream.of(tax.says(), tax.because()).map(says -> new Text("tax of " + market, says));
    }

    private static Stream<Text> ofFamily(Family family) {
        Stream<Text> values = family.options().stream()
                .filter(option -> option.scale() == null)
                .flatMap(option -> option.values().stream()
                        .map(value -> new Text(
                                "value " + family.name() + "/" + option.name() + "/" + value.value(), value.says())));
        Stream<Text> positions = family.positions().stream()
                .map(position -> new Text("position " + family.name() + "/" + position.name(), position.says()));
        return Stream.of(
                        Stream.of(new Text("family " + family.name(), family.says())),
                        values,
                        positions,
                        family.positions().stream()
                                .flatMap(position -> ofDocuments(
                                        position.documents(), "position " + family.name() + "/" + position.name())),
                        ofTests(family))
                .flatMap(texts -> texts);
    }

    private static Stream<Text> ofTests(Family family) {
        EndOfLine tests = family.endOfLine();
        String in = " of " + family.name();
        return Stream.of(
                        tests.instruments().values().stream()
                                .map(each -> new Text("instrument " + each.name() + in, each.says())),
                        tests.groups().stream()
                                .flatMap(group -> Stream.of(group.says(), group.before())
                                        .map(says -> new Text("group " + group.name() + in, says))),
                        tests.groups().stream()
                                .flatMap(group -> group.tests().stream())
                                .flatMap(test -> Stream.of(test.says(), test.method())
                                        .map(says -> new Text("test " + test.name() + in, says))),
                        tests.labels().stream()
                                .flatMap(label -> Stream.of(label.says(), label.where())
                                        .map(says -> new Text("label " + label.name() + in, says))),
                        tests.sections().stream()
                                .map(section -> new Text("section " + section.number() + in, section.says())))
                .flatMap(texts -> texts);
    }

    private static Stream<Remark> check(Text text, List<String> languages) {
        List<String> missing = languages.stream()
                .filter(language ->
                        text.wording().byLanguage().getOrDefault(language, "").isBlank())
                .toList();
        return missing.isEmpty() ? Stream.empty() : Stream.of(remark(text, missing, languages));
    }

    private static Remark remark(Text text, List<String> missing, List<String> languages) {
        return new Remark(
                text.about(),
                Check.TRANSLATION,
                "'" + text.wording().english() + "' is not in " + String.join(", ", missing),
                String.join(", ", languages),
                "Have it translated; until then the English text is printed");
    }
}
