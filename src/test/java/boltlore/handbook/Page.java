package boltlore.handbook;

import java.util.List;
import java.util.Map;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.ext.heading.anchor.HeadingAnchorExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Heading;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * A page of the handbook.
 *
 * @param name of the file, without its ending
 * @param title its first heading
 */
record Page(String name, String title, Node content) {

    private static final List<Extension> EXTENSIONS =
            List.of(TablesExtension.create(), HeadingAnchorExtension.create());
    private static final Parser PARSER = Parser.builder().extensions(EXTENSIONS).build();

    // A table wider than a narrow screen is moved by itself; a code that is shown can be reached by keyboard to be
    // moved.
    private static final HtmlRenderer RENDERER = HtmlRenderer.builder()
            .extensions(EXTENSIONS)
            .attributeProviderFactory(context -> (node, tag, attributes) -> {
                if (tag.equals("pre")) {
                    attributes.putAll(Map.of("tabindex", "0"));
                }
            })
            .build();

    static Page of(String name, String markdown) {
        Node content = PARSER.parse(markdown);
        if (!(content.getFirstChild() instanceof Heading first) || first.getLevel() != 1) {
            throw new IllegalArgumentException(name + " does not begin with its title.");
        }
        content.accept(new AbstractVisitor() {
            @Override
            public void visit(Link link) {
                link.setDestination(link.getDestination().replaceFirst("^([a-z-]+)\\.md(#|$)", "$1.html$2"));
                visitChildren(link);
            }
        });
        return new Page(name, words(first), content);
    }

    /** The text of a node without its marks. */
    static String words(Node node) {
        StringBuilder words = new StringBuilder();
        node.accept(new AbstractVisitor() {
            @Override
            public void visit(Text text) {
                words.append(text.getLiteral());
            }

            @Override
            public void visit(Code code) {
                words.append(code.getLiteral());
            }
        });
        return words.toString();
    }

    /** The whole page as HTML that is well-formed XML too. */
    String html(List<Page> all, String release) {
        StringBuilder list = new StringBuilder();
        for (Page each : all) {
            String here = each.name().equals(name) ? " aria-current=\"page\"" : "";
            list.append("<li><a href=\"%s.html\"%s>%s</a></li>\n".formatted(each.name(), here, escaped(each.title())));
        }
        int sheet = all.stream().map(Page::name).toList().indexOf(name) + 1;
        return """
                <!DOCTYPE html>
                <html lang="en">
                <head>
                <meta charset="utf-8" />
                <meta name="viewport" content="width=device-width, initial-scale=1" />
                <meta name="color-scheme" content="light dark" />
                <title>%1$s – Boltlore</title>
                <link rel="stylesheet" href="handbook.css" />
                </head>
                <body>
                <a class="skip" href="#text">To the text</a>
                <nav aria-label="Sheets of the handbook">
                <ol>
                %2$s</ol>
                </nav>
                <main id="text">
                %3$s</main>
                <footer><span>%4$s</span><span>%1$s</span><span>Sheet %5$d of %6$d</span></footer>
                </body>
                </html>
                """.formatted(
                        escaped(title),
                        list,
                        RENDERER.render(content)
                                .replace("<table>", "<div class=\"table\" tabindex=\"0\"><table>")
                                .replace("</table>", "</table></div>"),
                        escaped(release),
                        sheet,
                        all.size());
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
    }
}
