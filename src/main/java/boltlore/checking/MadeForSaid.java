package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Option;
import boltlore.catalogue.Position;
import boltlore.catalogue.Role;
import boltlore.measure.OptionName;
import java.util.List;
import java.util.stream.Stream;

/**
 * Parts of which an order's market or language picks one say which they are made for, in the part master: only so are two
 * that were exchanged between lines seen. A part that one market has and others do without may be made for all.
 */
final class MadeForSaid {

    private MadeForSaid() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream()
                .flatMap(family -> Stream.of(Role.MARKET, Role.LANGUAGE)
                        .flatMap(role -> family.inRole(role).stream())
                        .flatMap(option -> family.positions().stream()
                                .flatMap(position -> picked(position, option.name()).stream())
                                .filter(line -> !catalogue
                                        .part(line.part())
                                        .geometry()
                                        .madeFor()
                                        .containsKey(option.name()))
                                .map(line -> remark(family, line, option))));
    }

    private static List<Line> picked(Position position, OptionName option) {
        List<Line> lines = position.lines().stream()
                .filter(line -> mentions(line.when(), option))
                .toList();
        long parts = lines.stream().map(Line::part).distinct().count();
        return parts > 1 ? lines : List.of();
    }

    private static boolean mentions(Condition condition, OptionName option) {
        return (condition instanceof Condition.Is is && is.option().equals(option))
                || condition.parts().stream().anyMatch(inner -> mentions(inner, option));
    }

    private static Remark remark(Family family, Line line, Option option) {
        return new Remark(
                Said.line(family, line),
                Check.MADE_FOR,
                "part " + line.part() + ", which '" + option.name() + "' picks, without 'madeFor' for it",
                "the " + option.name() + " that the part is made for, in the part master",
                "Add 'madeFor' to the part, so that one exchanged for another is seen");
    }
}
