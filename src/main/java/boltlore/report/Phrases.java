package boltlore.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.text.MessageFormat;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.ResourceBundle.Control;

/**
 * The words of a sheet in one language, from its resource bundle; English, the bundle's root, where one is missing. All
 * words are patterns of {@link MessageFormat}, also those without a place for an argument: an apostrophe is written twice.
 */
public final class Phrases {

    /** The language of the computer never stands in for one that has no words. */
    private static final Control NO_FALLBACK = Control.getNoFallbackControl(Control.FORMAT_PROPERTIES);

    private final ResourceBundle words;
    private final Locale locale;
    private final String decimalSign;

    private Phrases(ResourceBundle words) {
        this.words = words;
        this.locale = words.getLocale().equals(Locale.ROOT) ? Locale.ENGLISH : words.getLocale();
        this.decimalSign =
                String.valueOf(DecimalFormatSymbols.getInstance(locale).getDecimalSeparator());
    }

    /** The words of that sheet; its bundle stands beside the class, as 'contents.properties' and 'contents_de.properties'. */
    public static Phrases of(Class<?> beside, String sheet, String language) {
        Locale locale = language.matches("[a-z]{2,3}") ? Locale.forLanguageTag(language) : Locale.ROOT;
        ClassLoader loader = beside.getClassLoader();
        return new Phrases(
                ResourceBundle.getBundle(beside.getPackageName() + "." + sheet, locale, loader, NO_FALLBACK));
    }

    /**
     * The words with that name.
     *
     * @param arguments what stands where the words say {0}, {1} …
     * @throws java.util.MissingResourceException where not even English has them
     */
    public String say(String name, String... arguments) {
        return format(name, (Object[]) arguments);
    }

    /** The words with that name; empty where not even English has them. */
    public Optional<String> find(String name) {
        return words.containsKey(name) ? Optional.of(say(name)) : Optional.empty();
    }

    private String format(String name, Object... arguments) {
        return new MessageFormat(words.getString(name), locale).format(arguments);
    }

    /** The part's unit beside that quantity as people of that language write it; one that has no words stands as it is. */
    public String unit(String unit, BigDecimal quantity) {
        String name = "unit." + unit;
        return words.containsKey(name) ? format(name, quantity) : unit;
    }

    /** The day as a sentence of that language has it: '8 April 2026', '8. April 2026', '1er avril 2026'. */
    public String day(LocalDate day) {
        String number = day.getDayOfMonth() == 1 && locale.equals(Locale.FRENCH) ? "d'er'" : "d";
        String point = locale.equals(Locale.GERMAN) ? "'.'" : "";
        return day.format(DateTimeFormatter.ofPattern(number + point + " MMMM uuuu", locale));
    }

    /** The number with that many decimals, rounded half-up, and the language's decimal sign. */
    public String number(BigDecimal number, int decimals) {
        return figures(number.setScale(decimals, RoundingMode.HALF_UP).toPlainString());
    }

    /** All digits of the number, without zeros at the end, with the language's decimal sign. */
    public String number(BigDecimal number) {
        return figures(number.stripTrailingZeros().toPlainString());
    }

    /** A text in whose numbers every decimal point gives way to the language's sign: '403.2 V' becomes '403,2 V'. */
    public String figures(String text) {
        return text.replaceAll("(?<=\\d)\\.(?=\\d)", decimalSign);
    }
}
