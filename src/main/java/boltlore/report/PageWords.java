package boltlore.report;

import java.util.Collection;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a page says in words, whichever block they stand in. */
final class PageWords {

    private PageWords() {}

    /** Of these names those that stand on the page as words of their own: 'BL-1' is not named by 'BL-12'. */
    static Set<String> namedOn(Page page, Collection<String> names) {
        if (names.isEmpty()) {
            return Set.of();
        }
        String words = page.blocks().stream().flatMap(PageWords::of).collect(Collectors.joining("\n"));
        return names.stream().filter(name -> named(name, words)).collect(Collectors.toSet());
    }

    private static boolean named(String name, String words) {
        return Pattern.compile("(?<![\\w-])" + Pattern.quote(name) + "(?![\\w-])", Pattern.UNICODE_CHARACTER_CLASS)
                .matcher(words)
                .find();
    }

    private static Stream<String> of(Block block) {
        if (block instanceof Heading heading) {
            return Stream.of(heading.text());
        }
        if (block instanceof Note note) {
            return Stream.of(note.words());
        }
        if (block instanceof Particulars particulars) {
            return particulars.entries().stream()
                    .flatMap(entry -> Stream.concat(Stream.of(entry.label()), said(entry.cell())));
        }
        return block instanceof Table table
                ? table.rows().stream()
                        .flatMap(row -> Stream.concat(
                                Stream.of(row.words()), row.cells().stream().flatMap(PageWords::said)))
                : Stream.empty();
    }

    private static Stream<String> said(Cell cell) {
        return cell instanceof Cell.Words words ? Stream.of(words.text()) : Stream.empty();
    }
}
