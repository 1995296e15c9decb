package boltlore.report;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * One worksheet, which prints on as many sheets of A4 as it needs.
 *
 * @param name unique in the workbook; a writer shortens or cleans it where its format is narrower
 * @param tab what people know it by, in its language; its name where nothing else is said
 * @param language of its words and numbers where it is not the report's: a customer's page among the workshop's; else
 *     empty
 */
public record Page(String name, String tab, String language, PrintSetup print, List<Block> blocks) {

    public Page {
        blocks = List.copyOf(blocks);
        if (name.isBlank()) {
            throw new IllegalArgumentException("A page has a name");
        }
        Set<String> names = new HashSet<>();
        blocks.stream().flatMap(Page::nameOf).forEach(blockName -> {
            if (!names.add(blockName)) {
                throw new IllegalArgumentException("Page '" + name + "' has two blocks '" + blockName + "'");
            }
        });
    }

    public static PageBuilder named(String name) {
        return new PageBuilder(name);
    }

    /** The same page with other blocks. */
    public Page of(List<Block> others) {
        return new Page(name, tab, language, print, others);
    }

    /** What its words and numbers are written in. */
    public String languageIn(Report report) {
        return language.isEmpty() ? report.language() : language;
    }

    public Stream<Table> tables() {
        return blocks.stream().filter(Table.class::isInstance).map(Table.class::cast);
    }

    public Stream<Particulars> particulars() {
        return blocks.stream().filter(Particulars.class::isInstance).map(Particulars.class::cast);
    }

    private static Stream<String> nameOf(Block block) {
        if (block instanceof Table table) {
            return Stream.of(table.id());
        }
        return block instanceof Particulars particulars ? Stream.of(particulars.name()) : Stream.empty();
    }
}
