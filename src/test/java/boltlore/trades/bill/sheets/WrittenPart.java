package boltlore.trades.bill.sheets;

import boltlore.report.SheetFile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** One text of a written file: the file itself, or one part of a zipped one. */
public record WrittenPart(String name, String text) {

    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,3}(?:,[0-9]{3})+\\.[0-9]+|[0-9]+\\.[0-9]+");

    private static final List<String> MONEY_WORDS =
            List.of("cost", "price", "margin", "mark-up", "markup", "kosten", "preis", "marge", "prix", "coût");

    /** What the format itself says and no person reads: page margins, column widths, sizes of type. */
    private static final Pattern FORMAT =
            Pattern.compile("<(?:/?pageMargins|col|row|sheetFormatPr|pageSetup)\\b[^>]*>|<sz [^>]*>|<w?:?ext[^>]*>");

    public static Stream<WrittenPart> of(SheetFile file) {
        if (!file.name().endsWith(".xlsx")) {
            return Stream.of(new WrittenPart(file.name(), new String(file.content(), StandardCharsets.UTF_8)));
        }
        List<WrittenPart> parts = new ArrayList<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file.content()))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                String text = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
                parts.add(new WrittenPart(
                        file.name() + "/" + entry.getName(),
                        FORMAT.matcher(text).replaceAll(" ")));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return parts.stream();
    }

    /** Every number with a fraction that stands in it. */
    public Stream<BigDecimal> numbers() {
        return NUMBER.matcher(text)
                .results()
                .map(match -> new BigDecimal(match.group().replace(",", "")));
    }

    /** Each amount, currency or word for money that stands in it, after the part's name. */
    List<String> leaks(Set<BigDecimal> amounts, Currency currency) {
        List<String> leaks = new ArrayList<>();
        numbers().filter(amounts::contains).forEach(amount -> leaks.add(name + " " + amount.setScale(2)));
        if (Pattern.compile("\\b" + currency.getCurrencyCode() + "\\b")
                        .matcher(text)
                        .find()
                || text.contains("€")) {
            leaks.add(name + " " + currency.getCurrencyCode());
        }
        String small = text.toLowerCase(Locale.ROOT);
        MONEY_WORDS.stream().filter(small::contains).forEach(word -> leaks.add(name + " " + word));
        return leaks;
    }
}
