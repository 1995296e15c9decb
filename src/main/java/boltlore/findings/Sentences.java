package boltlore.findings;

import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.text.MessageFormat;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Objects;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sentences of findings: messages whose arguments are named, {fuse} or {count,choice,1#one|1&lt;{count}}; an apostrophe is
 * one. Numbers keep their digits and take the language's decimal sign.
 */
public final class Sentences {

    private static final Pattern NAMED = Pattern.compile("\\{([a-zA-Z]+)");
    private static final Pattern HIGH_SIGN = Pattern.compile(" (?=[:;!?%»])|(?<=«) ");
    private static final ResourceBundle.Control ENGLISH_ELSE =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private Sentences() {}

    static String say(Finding finding, String language) {
        ResourceBundle messages = bundle(finding.kind().getClass(), Locale.forLanguageTag(language));
        Locale locale = messages.getLocale().equals(Locale.ROOT) ? Locale.ENGLISH : messages.getLocale();
        String pattern = messages.getString(key(finding.kind()));
        List<String> names = List.copyOf(finding.data().keySet());
        Object[] values = names.stream()
                .map(name -> argument(
                        Objects.requireNonNull(finding.data().get(name)),
                        pattern.contains("{" + name + ","),
                        language,
                        locale))
                .toArray();
        String said = new MessageFormat(numbered(pattern, names), locale).format(values);
        return locale.getLanguage().equals("fr") ? unbroken(said) : said;
    }

    /** French keeps a blank before its high signs, at which no line may end. */
    private static String unbroken(String french) {
        return HIGH_SIGN.matcher(french).replaceAll("\u00A0");
    }

    /** A word that all findings share. */
    public static String word(String key, String language) {
        return bundle(Sentences.class, Locale.forLanguageTag(language)).getString(key);
    }

    /**
     * The message of a kind.
     *
     * @throws MissingResourceException where nobody has written one
     */
    public static String pattern(Kind kind, Locale locale) {
        return bundle(kind.getClass(), locale).getString(key(kind));
    }

    /** What a kind is called: as the bundles 'titles' have it, or else its code with a capital in front. */
    static String title(Kind kind, String language) {
        ResourceBundle titles = ResourceBundle.getBundle(
                Sentences.class.getPackageName() + ".titles",
                Locale.forLanguageTag(language),
                Sentences.class.getClassLoader(),
                ENGLISH_ELSE);
        String code = kind.code();
        return titles.containsKey(key(kind))
                ? new MessageFormat(titles.getString(key(kind)), Locale.ROOT).format(new Object[0])
                : code.substring(0, 1).toUpperCase(Locale.ROOT) + code.substring(1);
    }

    private static String key(Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static ResourceBundle bundle(Class<?> beside, Locale locale) {
        return ResourceBundle.getBundle(
                beside.getPackageName() + ".findings", locale, beside.getClassLoader(), ENGLISH_ELSE);
    }

    private static String numbered(String pattern, List<String> names) {
        return NAMED.matcher(pattern.replace("'", "''")).replaceAll(match -> {
            int number = names.indexOf(match.group(1));
            if (number < 0) {
                throw new IllegalArgumentException(
                        "The sentence asks for '" + match.group(1) + "', the finding has only " + names);
            }
            return Matcher.quoteReplacement("{" + number);
        });
    }

    /** A choice or a plural takes the number itself. */
    private static Object argument(Object value, boolean chooses, String language, Locale locale) {
        if (chooses) {
            return value;
        }
        if (value instanceof BigDecimal number) {
            char sign = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
            return number.toPlainString().replace('.', sign);
        }
        if (value instanceof Wording said) {
            return said.in(language);
        }
        if (value instanceof Finding finding) {
            return finding.says(language);
        }
        return value instanceof Collection<?> several
                ? String.join(", ", several.stream().map(String::valueOf).toList())
                : String.valueOf(value);
    }
}
