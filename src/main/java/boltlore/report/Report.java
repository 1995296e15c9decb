package boltlore.report;

import boltlore.findings.Findings;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What one room gets of one order or batch.
 *
 * @param file name of its files without ending: small letters, digits and hyphens only
 * @param author the workshop that issues it
 * @param language of its words
 * @param findings all that a person must know of it
 * @param glance what a terminal shows of it
 * @param data tables for programs alone: rows of which the pages show the most important
 * @param dated from the order, never from the clock, so that the same order gives the same bytes
 */
public record Report(
        String file,
        String title,
        String subject,
        String author,
        LocalDate dated,
        String language,
        Findings findings,
        List<Block> glance,
        List<Page> pages,
        List<Table> data) {

    public Report {
        pages = List.copyOf(pages);
        glance = List.copyOf(glance);
        data = List.copyOf(data);
        if (!file.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new IllegalArgumentException("Not a name for a file: '" + file + "'");
        }
        if (pages.isEmpty()) {
            throw new IllegalArgumentException("Report '" + file + "' has no page");
        }
        Set<String> names = new HashSet<>();
        pages.forEach(page -> {
            if (!names.add(page.name())) {
                throw new IllegalArgumentException("Report '" + file + "' has two pages '" + page.name() + "'");
            }
        });
        References.check(pages);
    }

    public static ReportBuilder named(String file, String title) {
        return new ReportBuilder(file, title);
    }

    /** All that programs read: those of the pages, and those for programs alone. */
    public Stream<Table> tables() {
        return Stream.concat(pages.stream().flatMap(Page::tables), data.stream());
    }

    /** All single values that programs read. */
    public List<Fact> facts() {
        return Fact.of(this);
    }

    public Page page(String name) {
        return pages.stream()
                .filter(page -> page.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No page '" + name + "' in '" + file + "'"));
    }
}
