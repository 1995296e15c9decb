package boltlore.handbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class HandbookTest {

    @TempDir
    static Path folder;

    private static final Map<String, Document> PAGES = new HashMap<>();

    /** That each page is read as XML shows too that it is well-formed. */
    @BeforeAll
    static void write() throws Exception {
        Handbook.write(folder);
        for (String name : Handbook.NAMES) {
            PAGES.put(
                    name + ".html",
                    DocumentBuilderFactory.newInstance()
                            .newDocumentBuilder()
                            .parse(folder.resolve(name + ".html").toFile()));
        }
    }

    @Test
    void every_link_leads_to_a_page_or_a_place_on_one() {
        assertThat(broken(PAGES)).isEmpty();
    }

    @Test
    void a_link_to_a_page_or_place_that_is_not_there_is_noticed() throws Exception {
        String text = "# One\n\n[a](two.md) [b](#there) [c](one.md#one)\n";
        Page page = Page.of("one", text);
        Path file = Files.writeString(folder.resolve("one.html"), page.html(List.of(page), "boltlore"));
        Document read =
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());

        assertThat(broken(Map.of("one.html", read))).containsExactly("one.html: #there", "one.html: two.html");
    }

    @Test
    void no_page_asks_another_host() throws IOException {
        List<String> asked = new ArrayList<>();
        PAGES.forEach((name, page) -> elements(page)
                .forEach(element -> Stream.of("href", "src", "style", "onclick")
                        .map(element::getAttribute)
                        .filter(value -> value.matches("(?i)([a-z]+:)?//.*|.*url\\(.*|data:.*"))
                        .forEach(value -> asked.add(name + ": " + value))));

        assertThat(asked).isEmpty();
        assertThat(PAGES.values())
                .allSatisfy(
                        page -> assertThat(page.getElementsByTagName("script").getLength())
                                .isZero());
        assertThat(folder.resolve("handbook.css")).content().doesNotContain("url(", "@import");
    }

    @Test
    void every_picture_lies_beside_the_pages_and_is_told_in_words() {
        PAGES.forEach((name, page) -> elements(page)
                .filter(each -> each.getTagName().equals("img"))
                .forEach(picture -> {
                    assertThat(folder.resolve(picture.getAttribute("src")))
                            .as(name)
                            .exists();
                    assertThat(picture.getAttribute("alt")).as(name).isNotBlank();
                }));
    }

    @Test
    void every_page_is_on_the_list_and_says_where_one_is() {
        PAGES.forEach((name, page) -> {
            Set<String> listed = new TreeSet<>();
            elements(page)
                    .filter(each -> each.getTagName().equals("a"))
                    .forEach(link -> listed.add(link.getAttribute("href")));
            assertThat(listed).as(name).containsAll(PAGES.keySet());
            assertThat(elements(page).filter(each -> each.hasAttribute("aria-current")))
                    .as(name)
                    .singleElement()
                    .satisfies(here -> assertThat(here.getAttribute("href")).isEqualTo(name));
        });
    }

    /** Contrast of 7 to 1 between text and paper, in the light and in the dark: WCAG 2.2, 1.4.6, with its own formula. */
    @Test
    void text_can_be_read_by_weak_eyes_in_light_dark_and_print() throws IOException {
        List<String> inks = colours("ink");
        List<String> papers = colours("paper");

        assertThat(inks).hasSize(3).hasSameSizeAs(papers);
        for (int i = 0; i < inks.size(); i++) {
            assertThat(contrast(inks.get(i), papers.get(i))).isGreaterThan(7);
        }
        assertThat(contrast("#777777", "#ffffff")).isBetween(4.4, 4.5);
    }

    @Test
    void a_page_without_a_title_is_refused() {
        assertThatThrownBy(() -> Page.of("x", "No heading\n")).hasMessageContaining("x does not begin with its title");
    }

    @Test
    void the_README_leads_only_to_files_that_are_there() throws IOException {
        List<String> gone = Pattern.compile("\\]\\(([^)#]+)[^)]*\\)")
                .matcher(Files.readString(Path.of("README.md")))
                .results()
                .map(found -> found.group(1))
                .filter(link -> !Files.exists(Path.of(link)))
                .toList();

        assertThat(gone).isEmpty();
    }

    @Test
    void the_release_notes_tell_of_the_version_that_is_built() throws IOException {
        Matcher version = Pattern.compile("<version>([^<]+)</version>").matcher(Files.readString(Path.of("pom.xml")));

        assertThat(version.find()).isTrue();
        assertThat(Handbook.SOURCES.resolve("release-notes.md")).content().contains("\n## " + version.group(1) + "\n");
    }

    private static List<String> colours(String name) throws IOException {
        return Pattern.compile("--" + name + ": (#[0-9a-f]+);")
                .matcher(Files.readString(folder.resolve("handbook.css")))
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    private static double contrast(String one, String other) {
        double lighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(String colour) {
        String six = colour.length() == 4 ? colour.replaceAll("[0-9a-f]", "$0$0") : colour;
        double[] parts = new double[3];
        for (int i = 0; i < 3; i++) {
            double part = Integer.parseInt(six.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            parts[i] = part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
        }
        return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
    }

    private static List<String> broken(Map<String, Document> pages) {
        Map<String, Set<String>> places = new HashMap<>();
        pages.forEach((name, page) -> {
            Set<String> ids = new TreeSet<>();
            elements(page).map(each -> each.getAttribute("id")).forEach(ids::add);
            places.put(name, ids);
        });
        Set<String> broken = new TreeSet<>();
        pages.forEach((name, page) -> elements(page)
                .filter(each -> each.getTagName().equals("a"))
                .map(each -> each.getAttribute("href"))
                .filter(href -> !leads(href, name, places))
                .forEach(href -> broken.add(name + ": " + href)));
        return List.copyOf(broken);
    }

    private static boolean leads(String href, String from, Map<String, Set<String>> places) {
        String[] parts = href.split("#", 2);
        Set<String> page = places.get(parts[0].isEmpty() ? from : parts[0]);
        return page != null && (parts.length == 1 || page.contains(parts[1]));
    }

    private static Stream<Element> elements(Document page) {
        NodeList all = page.getElementsByTagName("*");
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < all.getLength(); i++) {
            elements.add((Element) all.item(i));
        }
        return elements.stream();
    }
}
