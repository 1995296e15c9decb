package boltlore.report;

import boltlore.report.drawing.Drawing;
import java.util.ArrayList;
import java.util.List;

/** Writes a {@link Page} down from top to bottom; portrait unless told otherwise. */
public final class PageBuilder {

    private final String name;
    private final List<Block> blocks = new ArrayList<>();
    private PrintSetup print = PrintSetup.PORTRAIT;
    private String language = "";
    private Words words = Words.of("");

    PageBuilder(String name) {
        this.name = name;
    }

    public PageBuilder print(PrintSetup setup) {
        print = setup;
        return this;
    }

    /** In another language than the report's. */
    public PageBuilder in(String languageOfWords) {
        language = languageOfWords;
        return this;
    }

    /** Written in English, and said in the language of these words: a page for others than the report's readers. */
    public PageBuilder in(Words inWhichItIsSaid) {
        words = inWhichItIsSaid;
        return in(words.language());
    }

    public PageBuilder landscape() {
        print = print.turned(true);
        return this;
    }

    public PageBuilder footer(String text) {
        print = print.withFooter(text);
        return this;
    }

    /** How many leading columns of the main table stay in view when one scrolls to the right. */
    public PageBuilder frozen(int columns) {
        print = print.withFrozenColumns(columns);
        return this;
    }

    public PageBuilder title(String text) {
        return add(new Heading(text, Look.TITLE));
    }

    public PageBuilder heading(String text) {
        return add(new Heading(text, Look.HEADING));
    }

    public PageBuilder note(String text) {
        return note("", text);
    }

    /** A note that programs know by its key: 'validity'. */
    public PageBuilder note(String key, String text) {
        return add(Note.plain(key, text));
    }

    /** A boxed paragraph; the lead stands out before it: 'High voltage' in the sheet's language. */
    public PageBuilder caution(String lead, String text) {
        return caution("", lead, text);
    }

    /** The workshop's own caution with that code. */
    public PageBuilder caution(String code, String lead, String text) {
        return add(Note.caution(code, lead, text));
    }

    public PageBuilder add(ParticularsBuilder particulars) {
        return add(particulars.build());
    }

    public PageBuilder add(TableBuilder table) {
        return add(table.build());
    }

    /** One chart, or two that stand side by side. */
    public PageBuilder charts(BarChart... charts) {
        return add(new BarCharts(List.of(charts)));
    }

    public PageBuilder picture(Drawing drawing) {
        return add(new Picture(drawing));
    }

    public PageBuilder signatures(String... lines) {
        return add(new Signatures(List.of(lines)));
    }

    public PageBuilder add(Block block) {
        blocks.add(block);
        return this;
    }

    /**
     * What another page says, under its title as a heading: before this page's signatures, or where it is signed itself,
     * after them; a head that stands here already is not said again. Of two short pages that one person reads this makes one.
     */
    public PageBuilder also(PageBuilder other) {
        boolean signed = !blocks.isEmpty() && blocks.get(blocks.size() - 1) instanceof Signatures;
        boolean signsToo = other.blocks.stream().anyMatch(Signatures.class::isInstance);
        int at = signed && !signsToo ? blocks.size() - 1 : blocks.size();
        blocks.addAll(
                at,
                other.blocks.stream()
                        .filter(block -> !blocks.contains(block))
                        .map(block -> block instanceof Heading title && title.look() == Look.TITLE
                                ? new Heading(title.text(), Look.HEADING)
                                : block)
                        .toList());
        return this;
    }

    public Page build() {
        return new Spoken(words).spoken(new Page(name, name, language, print, blocks));
    }
}
